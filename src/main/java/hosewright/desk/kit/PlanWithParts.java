package hosewright.desk.kit;

import hosewright.catalogue.NetPrice;
import hosewright.desk.Books;
import hosewright.desk.Planning;
import hosewright.desk.Refusals;
import hosewright.desk.WrittenJob;
import hosewright.desk.interview.Asker;
import hosewright.desk.kit.KitPart.Laid;
import hosewright.desk.words.ItemWords;
import hosewright.desk.words.WantedLine;
import hosewright.line.model.LinePlan;
import hosewright.quote.ExtraLine;
import hosewright.quote.Group;
import hosewright.quote.terms.CustomerTerms;
import java.util.List;
import java.util.Optional;

/** Plans a job with the parts and kits that its file wants besides the line. */
public final class PlanWithParts {
  private final Books open;
  private final Optional<Asker> asker;

  /**
   * @param asker asked where words could mean several items; empty in a script
   */
  public PlanWithParts(Books open, Optional<Asker> asker) {
    this.open = open;
    this.asker = asker;
  }

  /**
   * A plan whose goods hold the parts.
   *
   * @param job with its kits written out
   * @param planned whom and when it was priced for
   * @param free lines in free text, which are a quote's
   */
  public record Planned(WrittenJob job, Planning.Planned planned, List<ExtraLine> free) {}

  /** The plan at the prices of the job's customer and day. */
  public Planned plan(WrittenJob asked) {
    WrittenJob job = asked.writtenOut(open.kits());
    CountedParts parts = parts(job);
    Planning.Planned planned = new Planning(open).plan(job);
    LinePlan whole =
        parts.into(
            planned.plan(),
            open.catalogue(),
            CustomerTerms.of(open.catalogue(), planned.customer(), planned.date()));
    return new Planned(
        job,
        new Planning.Planned(whole, planned.customer(), planned.date()),
        parts.free(Laid.NOTHING.and(whole, 1), Group.FIRST, 1));
  }

  /** The plan at prices that stand already, such as those of an earlier revision. */
  public LinePlan plan(WrittenJob asked, NetPrice prices) {
    return parts(asked).into(new Planning(open).plan(asked, prices), open.catalogue(), prices);
  }

  private CountedParts parts(WrittenJob job) {
    Refusals refusals = new Refusals();
    CountedParts parts =
        CountedParts.read(
            job.beside().parts(),
            new WantedLine(ItemWords.in(open, asker), open.catalogue().currencyNeeded()),
            refusals);
    refusals.throwAny();
    return parts;
  }
}
