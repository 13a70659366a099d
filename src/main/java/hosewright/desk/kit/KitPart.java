package hosewright.desk.kit;

import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.measure.Measures;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line of a kit: so many of something, or so many for each length of hose or each line laid.
 *
 * @param text the part as a seller writes it, without how it is counted
 * @param counted how often it is wanted
 * @param everyFt the length of hose each is for, ft; 0 where it is not counted by length
 */
public record KitPart(String text, Counted counted, double everyFt) {
  private static final Pattern PER_LINE = Pattern.compile("(?i)(.+?)\\s+per\\s+line");
  private static final Pattern PER_LENGTH =
      Pattern.compile("(?i)(.+?)\\s+per\\s+(\\d+(?:\\.\\d+)?\\s*(?:ft|m))");
  private static final Pattern COUNT = Pattern.compile("(?:(\\d{1,6})\\s*[xX\u00d7]\\s+)?(.+)");

  /** What a part is counted by. */
  public enum Counted {
    ONCE,
    BY_LINE,
    BY_LENGTH
  }

  /**
   * The part a line asks for: {@code 2 x W-SPAN-15-3 per line}, {@code 1 x R-20 per 50 ft}.
   *
   * @throws hosewright.problem.BadInputException when a length cannot be read
   */
  public static KitPart of(String line) {
    Matcher byLine = PER_LINE.matcher(line.strip());
    if (byLine.matches()) {
      return new KitPart(byLine.group(1), Counted.BY_LINE, 0);
    }
    Matcher byLength = PER_LENGTH.matcher(line.strip());
    if (byLength.matches()) {
      double everyFt = Measures.lengthFt("per", byLength.group(2));
      if (everyFt > 0) {
        return new KitPart(byLength.group(1), Counted.BY_LENGTH, everyFt);
      }
    }
    return new KitPart(line.strip(), Counted.ONCE, 0);
  }

  /** Whether it is counted by what is laid. */
  public boolean isByLaid() {
    return counted != Counted.ONCE;
  }

  /** How often it is wanted for hose that is laid. */
  public int times(Laid laid) {
    return switch (counted) {
      case ONCE -> 1;
      case BY_LINE -> laid.lines();
      case BY_LENGTH -> (int) Math.ceil(laid.hoseFt() / everyFt);
    };
  }

  /** The part for hose that is laid: {@code 9 x R-20}; nothing where none of it is needed. */
  public List<String> forLaid(Laid laid) {
    Matcher parts = COUNT.matcher(text);
    if (!isByLaid() || !parts.matches()) {
      return List.of(text);
    }
    int each = parts.group(1) == null ? 1 : Integer.parseInt(parts.group(1));
    int times = times(laid);
    return times == 0
        ? List.of()
        : List.of(String.format(Locale.ROOT, "%d x %s", each * times, parts.group(2)));
  }

  /**
   * What is laid in a purchase.
   *
   * @param hoseFt hose of all lines together, ft
   * @param lines stretches of hose, each of those side by side
   */
  public record Laid(double hoseFt, int lines) {
    public static final Laid NOTHING = new Laid(0, 0);

    /** With a plan that is bought so many times. */
    public Laid and(LinePlan plan, int count) {
      double feet = hoseFt;
      int all = lines;
      for (Leg leg : plan.layout().hoseLegs()) {
        feet +=
            count
                * leg.sectionCounts().stream()
                    .mapToDouble(section -> section.lengthFt() * section.count())
                    .sum();
        all += count * leg.lines();
      }
      return new Laid(feet, all);
    }
  }
}
