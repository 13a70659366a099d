package hosewright.door.shell.rate;

import hosewright.desk.Books;
import hosewright.desk.rate.SetRate;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import hosewright.quote.terms.Rates.ExchangeRate;
import java.util.function.Supplier;

/** Puts on record what one unit of another currency is worth from a day on. */
public final class RateSetCommand extends ShellCommand {
  private final SetRate setRate;

  public RateSetCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "rate set",
                Group.BUY,
                "Puts on record what one of another currency is worth from a day on",
                "rate set CAD 0.73 --from 2026-01-01 --source \"our bank's letter\"")
            .with(
                ArgumentSpec.required("CURRENCY", "code of the other currency"),
                ArgumentSpec.required("RATE", "what one of it is worth"))
            .with(
                OptionSpec.value("into", "CURRENCY", "the currency it is worth so much of")
                    .withDefaultSaid("that of the list prices"),
                OptionSpec.value("from", "DAY", "first day it holds").withDefaultSaid("today"),
                OptionSpec.value("source", "TEXT", "where the figure is from").asRequired(),
                SignedBy.option()));
    this.setRate = new SetRate(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    ExchangeRate set =
        setRate.set(
            new SetRate.Request(
                in.argument(0).orElseThrow(),
                in.argument(1).orElseThrow(),
                in.value("into"),
                in.value("from"),
                in.required("source"),
                SignedBy.name(in)));
    return Answer.of(
        set,
        "From %s one %s is worth %s %s (%s)."
            .formatted(
                set.from(), set.currency(), set.rate().toPlainString(), set.into(), set.source()));
  }
}
