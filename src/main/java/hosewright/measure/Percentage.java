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
    Numeral numeral = Numeral.read(text == null ? "" : text);
    if (numeral.number().isEmpty()) {
      String meant = text == null ? "" : Numeral.meant(text);
      throw refusal(field, text == null ? "" : text.trim(), meant.isEmpty() ? "5%" : right(meant));
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

  private static String right(String meant) {
    try {
      var unused = read("", meant);
      return meant;
    } catch (BadInputException e) {
      return e.problems().get(0).nearest();
    }
  }

  private static BadInputException refusal(String field, String text, String nearest) {
    return new BadInputException(List.of(new Problem(field, text, ALLOWED, nearest)));
  }
}
