package hosewright.desk.supplier;

import hosewright.catalogue.Supplier;
import hosewright.desk.NamedPath;
import hosewright.intake.FilledSheet;
import hosewright.intake.FilledSheet.Filled;
import hosewright.order.RequestForPrice;
import hosewright.order.SupplierAnswer;
import hosewright.paper.quote.AskSheet;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.joda.money.Money;

/** Reads the sheets suppliers filled in, all or none of them. */
final class AnswerFiles {
  private static final int LONGEST_REMARK = 500;
  private static final int LONGEST_LEAD = 3650;

  private final String quote;
  private final List<RequestForPrice> asked;
  private final List<String> suppliers;
  private final List<Problem> problems = new ArrayList<>();

  AnswerFiles(String quote, List<RequestForPrice> asked, List<Supplier> suppliers) {
    this.quote = quote;
    this.asked = asked;
    this.suppliers = suppliers.stream().map(Supplier::code).toList();
  }

  /**
   * The answers on file with those of the sheets in their place.
   *
   * @throws BadInputException naming every cell that cannot be used
   */
  List<SupplierAnswer> read(List<String> files, List<SupplierAnswer> kept) {
    Map<List<String>, SupplierAnswer> answers = new LinkedHashMap<>();
    kept.forEach(answer -> answers.put(key(answer), answer));
    for (String file : files) {
      for (Filled row : rows(file)) {
        answer(row).ifPresent(answer -> answers.put(key(answer), answer));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return List.copyOf(answers.values());
  }

  private static List<String> key(SupplierAnswer answer) {
    return List.of(answer.wanted(), answer.offer().supplier());
  }

  private List<Filled> rows(String file) {
    try {
      return FilledSheet.read(NamedPath.of("file", file, "the name of a file"), AskSheet.COLUMNS);
    } catch (BadInputException e) {
      problems.addAll(e.problems());
    }
    return List.of();
  }

  /** The answer of a row; empty for a line the supplier left open. */
  private Optional<SupplierAnswer> answer(Filled row) {
    Map<String, String> cells = row.cells();
    if (cells.get("unit_price").isEmpty()) {
      return Optional.empty();
    }
    int before = problems.size();
    if (!cells.get("quote").equals(quote)) {
      refuse(row, "quote", "the answer to " + quote);
    }
    Optional<RequestForPrice> line =
        asked.stream()
            .filter(one -> String.valueOf(one.line()).equals(cells.get("line")))
            .findFirst();
    if (line.isEmpty()) {
      refuse(
          row,
          "line",
          asked.isEmpty()
              ? "nothing is still to be sourced"
              : "a line that was asked for, 1 to " + asked.size());
    } else if (!wanted(cells.get("wanted")).equals(line.get().wanted())) {
      refuse(row, "wanted", "as it was asked: " + line.get().wanted());
    }
    if (!suppliers.contains(cells.get("supplier"))) {
      refuse(row, "supplier", "one of " + String.join(", ", suppliers));
    }
    Optional<CurrencyUnit> currency = currency(row);
    Optional<Money> price = currency.flatMap(unit -> money(row, "unit_price", unit, false));
    Optional<Money> freight = currency.flatMap(unit -> money(row, "freight", unit, true));
    int leadDays = leadDays(row);
    String remark = cells.get("remark");
    if (remark.length() > LONGEST_REMARK) {
      refuse(row, "remark", "at most " + LONGEST_REMARK + " characters");
    }
    return problems.size() > before
        ? Optional.empty()
        : Optional.of(
            new SupplierAnswer(
                line.orElseThrow().wanted(),
                line.get().quantity(),
                new SupplierAnswer.Offer(
                    cells.get("supplier"),
                    price.orElseThrow(),
                    freight.orElseThrow(),
                    leadDays,
                    remark),
                false,
                ""));
  }

  /** The text without the apostrophe that keeps a spreadsheet from running it. */
  private static String wanted(String cell) {
    return cell.startsWith("'") ? cell.substring(1) : cell;
  }

  private Optional<CurrencyUnit> currency(Filled row) {
    try {
      return Optional.of(CurrencyUnit.of(row.cells().get("currency").toUpperCase(Locale.ROOT)));
    } catch (IllegalCurrencyException e) {
      refuse(row, "currency", "a currency code of ISO 4217, such as USD");
      return Optional.empty();
    }
  }

  private Optional<Money> money(
      Filled row, String column, CurrencyUnit currency, boolean mayBeEmpty) {
    String text = row.cells().get(column);
    if (text.isEmpty() && mayBeEmpty) {
      return Optional.of(Money.zero(currency));
    }
    int places = currency.getDecimalPlaces();
    if (!text.matches("\\d{1,9}(\\.\\d{1,9})?")
        || new BigDecimal(text).stripTrailingZeros().scale() > places) {
      refuse(row, column, "0 or more " + currency + " with at most " + places + " decimals");
      return Optional.empty();
    }
    return Optional.of(Money.of(currency, new BigDecimal(text).stripTrailingZeros()));
  }

  private int leadDays(Filled row) {
    String text = row.cells().get("lead_days");
    if (!text.matches("\\d{1,4}") || Integer.parseInt(text) > LONGEST_LEAD) {
      refuse(row, "lead_days", "a whole number of days from 0 to " + LONGEST_LEAD);
      return 0;
    }
    return Integer.parseInt(text);
  }

  private void refuse(Filled row, String column, String allowed) {
    problems.add(Problem.of(row.place() + " column " + column, row.cells().get(column), allowed));
  }
}
