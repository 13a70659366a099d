package hosewright.measure;

import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What one kind of field accepts: units and limits, and how it refuses the rest.
 *
 * @param unit the unit the answer is in
 * @param least lowest value, in that unit
 * @param leastAllowed whether the lowest value itself is accepted
 * @param most highest value, accepted
 * @param example a right value, ready to type
 * @param accepted units that may be written
 */
record Range(
    TradeUnit unit,
    double least,
    boolean leastAllowed,
    double most,
    String example,
    List<TradeUnit> accepted) {

  private static final Pattern FEET_THEN_INCHES =
      Pattern.compile("(?:ft|feet|foot|'|′)\\s*-?\\s*(?<inches>\\d.*)");

  static Range above(double least, double most, TradeUnit unit, String example) {
    return new Range(unit, least, false, most, example, TradeUnit.of(unit.kind));
  }

  static Range from(double least, double most, TradeUnit unit, String example) {
    return new Range(unit, least, true, most, example, TradeUnit.of(unit.kind));
  }

  Range in(TradeUnit... units) {
    return new Range(unit, least, leastAllowed, most, example, List.of(units));
  }

  /** The value in {@link #unit}; a bare number is refused, except zero where zero is allowed. */
  double read(String field, String text) {
    Numeral numeral = numeral(field, text);
    boolean bareZero = numeral.number().getAsDouble() == 0 && admits(0);
    if (numeral.unitText().isEmpty() && !bareZero) {
      throw refusal(
          field, text, "a number needs its unit; " + allowed(), suggestion(numeral, unit.label()));
    }
    return inRange(field, text, convert(field, text, numeral));
  }

  /** The value in {@link #unit}, which a bare number is taken to be in. */
  double readBareAllowed(String field, String text) {
    return inRange(field, text, convert(field, text, numeral(field, text)));
  }

  double inRange(String field, String text, double value) {
    if (admits(value)) {
      return value;
    }
    String nearest =
        value < 0 && admits(-value) ? Shown.number(-value, 4) + " " + unit.label() : "";
    throw refusal(field, text, allowed(), nearest);
  }

  BadInputException refusal(String field, String text, String allowed, String nearest) {
    return new BadInputException(List.of(new Problem(field, text, allowed, nearest)));
  }

  String allowed() {
    String from = leastAllowed ? "from " : "over ";
    return "give "
        + unit.kind.withArticle
        + " such as "
        + example
        + " (in "
        + accepted.stream().map(TradeUnit::label).collect(Collectors.joining(", "))
        + "), "
        + from
        + Shown.number(least, 4)
        + " up to "
        + Shown.number(most, 4)
        + " "
        + unit.label();
  }

  Numeral numeral(String field, String text) {
    if (text == null || text.isBlank()) {
      throw refusal(field, "", allowed(), example);
    }
    Numeral numeral = Numeral.read(text);
    if (numeral.number().isEmpty()) {
      throw refusal(
          field,
          text,
          "no number can be read; " + allowed(),
          Numeral.rightFor(text, meant -> read("", meant), example));
    }
    return numeral;
  }

  private double convert(String field, String text, Numeral numeral) {
    double number = numeral.number().getAsDouble();
    if (numeral.unitText().isEmpty()) {
      return number;
    }
    OptionalDouble feetAndInches = feetAndInches(numeral);
    if (feetAndInches.isPresent()) {
      return feetAndInches.getAsDouble();
    }
    TradeUnit written = TradeUnit.labelled(numeral.unitText());
    if (written == null) {
      String near = Nearest.to(numeral.unitText(), labels());
      throw refusal(
          field,
          text,
          "'" + numeral.unitText() + "' is not a unit it knows; " + allowed(),
          suggestion(numeral, near.isEmpty() ? unit.label() : near));
    }
    if (written.kind != unit.kind) {
      String says = written.label() + " is " + written.kind.withArticle + "; " + allowed();
      throw refusal(field, text, says, suggestion(numeral, unit.label()));
    }
    if (!accepted.contains(written)) {
      throw refusal(field, text, written.label() + " is not used here; " + allowed(), "");
    }
    return Conversion.convert(number, written, unit);
  }

  /** Reads the rest of "5 ft 6 in" or {@code 5'6"}; empty for any other writing. */
  private OptionalDouble feetAndInches(Numeral numeral) {
    Matcher matcher = FEET_THEN_INCHES.matcher(numeral.unitText());
    if (unit != TradeUnit.FOOT || !matcher.matches()) {
      return OptionalDouble.empty();
    }
    Numeral inches = Numeral.read(matcher.group("inches"));
    if (inches.number().isEmpty() || TradeUnit.labelled(inches.unitText()) != TradeUnit.INCH) {
      return OptionalDouble.empty();
    }
    double feet = numeral.number().getAsDouble();
    return OptionalDouble.of(feet + Math.copySign(inches.number().getAsDouble() / 12, feet));
  }

  /** The number with another label, if that would be right; else nothing. */
  private String suggestion(Numeral numeral, String label) {
    double value =
        Conversion.convert(numeral.number().getAsDouble(), TradeUnit.labelled(label), unit);
    return admits(value) ? numeral.numberText() + " " + label : "";
  }

  private boolean admits(double value) {
    return (leastAllowed ? value >= least : value > least) && value <= most;
  }

  private List<String> labels() {
    List<String> labels = new ArrayList<>();
    accepted.forEach(one -> labels.addAll(one.labels));
    return labels;
  }
}
