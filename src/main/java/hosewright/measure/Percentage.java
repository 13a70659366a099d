package hosewright.measure;

import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.List;

/** Reads "5%", "5 %" or "0.05" as 0.05. */
final class Percentage {
  private static final String ALLOWED =
      "give a percentage such as 5% (or 0.05), from 0% up to 100%";

  private Percentage() {}

  static double read(String field, String text) {
    String given = text == null ? "" : text;
    Numeral numeral = Numeral.read(given);
    if (numeral.number().isEmpty()) {
      throw refusal(field, given.trim(), Numeral.rightFor(given, meant -> read("", meant), "5%"));
    }
    double number = numeral.number().getAsDouble();
    boolean bare = numeral.unitText().isEmpty();
    if (bare ? number >= 1 : TradeUnit.labelled(numeral.unitText()) != TradeUnit.PERCENT) {
      throw refusal(field, text, number >= 0 && number <= 100 ? numeral.numberText() + "%" : "");
    }
    double fraction = bare ? number : number / 100;
    if (fraction < 0 || fraction > 1) {
      throw refusal(
          field,
          text,
          fraction < 0 && fraction >= -1 ? Shown.number(-fraction * 100, 4) + "%" : "");
    }
    return fraction;
  }

  private static BadInputException refusal(String field, String text, String nearest) {
    return new BadInputException(List.of(new Problem(field, text, ALLOWED, nearest)));
  }
}
