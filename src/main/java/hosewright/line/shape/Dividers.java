package hosewright.line.shape;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import hosewright.job.Job;
import hosewright.job.question.Asked;
import hosewright.line.assembly.Bridge;
import hosewright.line.assembly.Split;
import hosewright.line.check.Checks;
import hosewright.line.goods.Eligibility;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The wyes and siameses that a job may use. */
public final class Dividers {
  private static final List<String> IN_WORDS = List.of("no", "one", "two", "three", "four");

  private final Job job;
  private final List<Item> items;

  public Dividers(Job job, Catalogue catalogue, NetPrice prices) {
    this(job, catalogue, new Eligibility(job, prices));
  }

  Dividers(Job job, Catalogue catalogue, Eligibility eligibility) {
    this.job = job;
    List<Item> named = named(job, catalogue);
    this.items =
        Stream.of(ItemKind.WYE, ItemKind.SIAMESE)
            .flatMap(kind -> catalogue.ofKind(kind).stream())
            .filter(eligibility::wetted)
            .filter(item -> namedOrFree(item, named))
            .toList();
  }

  /** Wyes and siameses that the buyer names: of their kind the line is laid through no other. */
  private static List<Item> named(Job job, Catalogue catalogue) {
    return job.accessories().stream()
        .flatMap(wanted -> catalogue.item(Asked.of(wanted).what()).stream())
        .toList();
  }

  private static boolean namedOrFree(Item item, List<Item> named) {
    return named.contains(item) || named.stream().noneMatch(one -> one.kind() == item.kind());
  }

  List<Bridge.Link> wyes(int lines) {
    return links(item -> Split.asWye(item, lines));
  }

  List<Bridge.Link> siameses(int lines) {
    return links(item -> Split.asSiamese(item, lines));
  }

  private List<Bridge.Link> links(Function<Item, Optional<Bridge.Link>> asLink) {
    return items.stream().map(asLink).flatMap(Optional::stream).toList();
  }

  /** What the job cannot do without and the catalogue has not; empty when it has. */
  public Optional<String> lacking() {
    int lines = job.appliances();
    if (lines > 1 && wyes(lines).isEmpty()) {
      return Optional.of(
          Checks.text("wye: no %s-outlet wye is sold for this use", IN_WORDS.get(lines)));
    }
    if (job.outlets() > 1 && siameses(job.outlets()).isEmpty()) {
      return Optional.of(
          Checks.text(
              "siamese: no %s-inlet siamese is sold for this use", IN_WORDS.get(job.outlets())));
    }
    return Optional.empty();
  }
}
