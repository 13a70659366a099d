package hosewright.door.shell.quote;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.catalogue.MoneyWords;
import hosewright.desk.Books;
import hosewright.desk.Signing;
import hosewright.desk.supplier.CompareAnswers;
import hosewright.desk.supplier.CompareAnswers.Compared;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.QuoteArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import hosewright.order.Comparison;
import hosewright.order.RequestForPrice;
import hosewright.order.SupplierAnswer;
import hosewright.problem.BadInputException;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.joda.money.Money;

/** Sets suppliers' answers side by side and notes whose is taken. */
public final class QuoteAnswersCommand extends ShellCommand {
  private final CompareAnswers compareAnswers;

  public QuoteAnswersCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote answers",
                Group.QUOTE,
                "Reads suppliers' answers back, side by side; the cheapest landed is taken",
                "quote answers Q-000003 quotes/Q-000003-ask-COUPL.xlsx")
            .with(
                QuoteArgument.of(books),
                ArgumentSpec.optional("FILE", "sheets filled in; left out, the answers on file")
                    .completingFiles()
                    .asRepeatable())
            .with(
                OptionSpec.value("choose", "LINE=SUPPLIER", "take another than the cheapest")
                    .asRepeatable(),
                OptionSpec.value("reason", "TEXT", "why another is taken"),
                OptionSpec.value(
                        "rate", "CODE=RATE", "what one of a foreign currency is in ours: CAD=0.73")
                    .asRepeatable(),
                SignedBy.option()));
    this.compareAnswers = new CompareAnswers(books);
  }

  /** An answer side by side with others; suppliers' prices are for the dealer's eyes. */
  record Offer(int line, @JsonUnwrapped SupplierAnswer answer, Money landed) {}

  record Answers(String number, List<Offer> answers, List<RequestForPrice> unanswered) {}

  @Override
  protected Answer answer(Invocation in) {
    Optional<String> reason = in.value("reason").map(text -> Signing.sentence("reason", text));
    Compared compared =
        compareAnswers.compare(
            new CompareAnswers.Request(
                in.argument(0).orElseThrow(),
                in.arguments().subList(1, in.arguments().size()),
                new CompareAnswers.Choice(rates(in), overrides(in), reason),
                SignedBy.name(in)));
    Comparison comparison = compared.comparison();
    return Answer.of(document(compared), screen -> text(comparison, screen));
  }

  private static Answers document(Compared compared) {
    Comparison comparison = compared.comparison();
    List<Offer> offers =
        comparison.lines().stream()
            .flatMap(
                line ->
                    line.answers().stream()
                        .map(
                            landed ->
                                new Offer(line.asked().line(), landed.answer(), landed.landed())))
            .toList();
    return new Answers(compared.number(), offers, unanswered(comparison));
  }

  private static List<RequestForPrice> unanswered(Comparison comparison) {
    return comparison.lines().stream()
        .filter(line -> line.answers().isEmpty())
        .map(Comparison.Line::asked)
        .toList();
  }

  private static String text(Comparison comparison, Screen screen) {
    Prose prose = new Prose(screen);
    prose.line("For your eyes only");
    Table table =
        Table.of("#", "wanted", "supplier", "each", "freight", "landed", "days", "taken")
            .numbers(0, 3, 4, 5, 6);
    for (Comparison.Line line : comparison.lines()) {
      for (Comparison.Landed landed : line.answers()) {
        SupplierAnswer answer = landed.answer();
        table.row(
            line.asked().line(),
            answer.wanted(),
            answer.offer().supplier(),
            MoneyWords.of(answer.offer().unitCost()),
            answer.offer().freight().getAmount().toPlainString(),
            MoneyWords.of(landed.landed()),
            answer.offer().leadDays(),
            answer.chosen() ? taken(answer) : "");
      }
    }
    if (!table.isEmpty()) {
      prose.block(table.on(screen));
    }
    unanswered(comparison)
        .forEach(
            asked -> prose.line("Nobody answered line " + asked.line() + ", " + asked.wanted()));
    prose.line(
        "Put a priced line on the quote: quote revise NUMBER --source LINE=PRICE --reason TEXT");
    return prose.toString();
  }

  private static String taken(SupplierAnswer answer) {
    return answer.reason().isEmpty() ? "yes" : "yes: " + answer.reason();
  }

  private static Map<Integer, String> overrides(Invocation in) {
    Map<Integer, String> overrides = new LinkedHashMap<>();
    for (String typed : in.values("choose")) {
      String[] parts = typed.split("=", 2);
      if (parts.length < 2 || !parts[0].strip().matches("\\d{1,5}")) {
        throw new BadInputException("choose", typed, "a line and a supplier, such as 1=COUPL");
      }
      overrides.put(Integer.parseInt(parts[0].strip()), parts[1].strip().toUpperCase(Locale.ROOT));
    }
    return overrides;
  }

  private static Map<CurrencyUnit, BigDecimal> rates(Invocation in) {
    Map<CurrencyUnit, BigDecimal> rates = new HashMap<>();
    for (String typed : in.values("rate")) {
      String[] parts = typed.split("=", 2);
      try {
        if (parts.length == 2 && parts[1].strip().matches("\\d{1,6}(\\.\\d{1,8})?")) {
          BigDecimal rate = new BigDecimal(parts[1].strip());
          if (rate.signum() > 0) {
            rates.put(CurrencyUnit.of(parts[0].strip().toUpperCase(Locale.ROOT)), rate);
            continue;
          }
        }
      } catch (IllegalCurrencyException e) {
        // falls through to the one message for all unusable rates
      }
      throw new BadInputException(
          "rate", typed, "a currency code of ISO 4217 and a rate over 0, such as CAD=0.73");
    }
    return rates;
  }
}
