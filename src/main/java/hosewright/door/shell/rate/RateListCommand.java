package hosewright.door.shell.rate;

import hosewright.desk.Books;
import hosewright.desk.rate.ListRates;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Table;
import hosewright.quote.terms.Rates.ExchangeRate;
import java.util.List;
import java.util.function.Supplier;

/** Lists what other currencies were and are worth. */
public final class RateListCommand extends ShellCommand {
  private final ListRates listRates;

  public RateListCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
            "rate list", Group.BUY, "Lists what other currencies were and are worth", "rate list"));
    this.listRates = new ListRates(books);
  }

  record Listed(List<ExchangeRate> rates) {}

  @Override
  protected Answer answer(Invocation in) {
    List<ExchangeRate> rates = listRates.list();
    return Answer.of(
        new Listed(rates),
        screen -> {
          if (rates.isEmpty()) {
            return "No rates yet. Start with 'rate set'.";
          }
          Table table = Table.of("one", "is worth", "of", "from", "source").numbers(1);
          rates.forEach(
              rate ->
                  table.row(
                      rate.currency(),
                      rate.rate().toPlainString(),
                      rate.into(),
                      rate.from(),
                      rate.source()));
          return table.on(screen);
        });
  }
}
