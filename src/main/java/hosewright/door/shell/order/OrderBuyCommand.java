package hosewright.door.shell.order;

import hosewright.desk.Books;
import hosewright.desk.order.BuyForOrder;
import hosewright.desk.supplier.OfferSuppliers;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.OrderArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import hosewright.order.Supplying;
import hosewright.problem.BadInputException;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.joda.money.Money;

/** Buys what an order is short of and nobody is asked for. */
public final class OrderBuyCommand extends ShellCommand {
  private static final int LONGEST_DAYS = 3650;
  private static final Pattern SUM = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,2})?)\\s*([A-Za-z]{3})");

  private final BuyForOrder buyForOrder;

  public OrderBuyCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order buy",
                Group.BUY,
                "Buys what an order is short of and nobody is asked for",
                "order buy O-000001 --line 1=2 --from WEAVE --each \"110.00 USD\"")
            .with(OrderArgument.order(books))
            .with(
                OrderArgument.lines(),
                OptionSpec.value("from", "SUPPLIER", "the code of whoever is asked")
                    .completing(() -> new OfferSuppliers(books).codes())
                    .withDefaultSaid("each item's own supplier"),
                OptionSpec.value("each", "SUM", "what one costs, such as 110.00 USD")
                    .withDefaultSaid("the cost in force"),
                OptionSpec.value("lead-days", "DAYS", "days until it is there")
                    .withDefaultSaid("as the catalogue has it"),
                SignedBy.option()));
    this.buyForOrder = new BuyForOrder(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    return OrderShowCommand.answer(
        buyForOrder.buy(
            new BuyForOrder.Request(
                in.argument(0).orElseThrow(),
                OrderArgument.quantities(in),
                new Supplying.From(
                    in.value("from").map(code -> code.strip().toUpperCase(Locale.ROOT)),
                    in.value("each").map(OrderBuyCommand::sum),
                    leadDays(in)),
                SignedBy.name(in))),
        false);
  }

  private static Money sum(String typed) {
    Matcher written = SUM.matcher(typed.strip());
    try {
      if (written.matches()) {
        return Money.of(
            CurrencyUnit.of(written.group(2).toUpperCase(Locale.ROOT)),
            new BigDecimal(written.group(1)));
      }
    } catch (IllegalCurrencyException | ArithmeticException e) {
      // falls through to the one message for all sums that cannot be used
    }
    throw new BadInputException("each", typed, "an amount and its currency, such as 110.00 USD");
  }

  private static OptionalInt leadDays(Invocation in) {
    if (in.value("lead-days").isEmpty()) {
      return OptionalInt.empty();
    }
    String typed = in.value("lead-days").get().strip();
    if (!typed.matches("\\d{1,4}") || Integer.parseInt(typed) > LONGEST_DAYS) {
      throw new BadInputException(
          "lead-days", typed, "a whole number of days from 0 to " + LONGEST_DAYS);
    }
    return OptionalInt.of(Integer.parseInt(typed));
  }
}
