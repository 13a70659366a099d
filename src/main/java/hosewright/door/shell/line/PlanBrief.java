package hosewright.door.shell.line;

import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.words.Prose;
import hosewright.line.model.Bill;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import hosewright.line.model.LinePlan;
import hosewright.line.model.LinePlan.OfLeg;
import hosewright.measure.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;

/**
 * What a plan comes to, on what is left of a screen: what to buy and for how much, what arrives,
 * what fails or nearly does, what to beware of.
 */
final class PlanBrief {
  /** The usual screen has 24 lines, of which the next prompt takes one. */
  private static final int SCREEN_LINES = 23;

  private static final int MOST_GOODS = 7;
  private static final int MOST_CHECKS = 4;
  private static final int MOST_LEGS = 5;

  /** A figure so near its limit, as a share of it, nearly fails. */
  private static final double NEARLY = 0.05;

  private final LinePlan plan;
  private final Screen screen;
  private final UnitSystem units;

  PlanBrief(LinePlan plan, Screen screen, UnitSystem units) {
    this.plan = plan;
    this.screen = screen;
    this.units = units;
  }

  /**
   * The text below what was said already.
   *
   * @param said how many lines of the screen are taken
   */
  String below(int said) {
    List<String> lines = new ArrayList<>(water());
    lines.addAll(told());
    List<String> goods = goods();
    int room = SCREEN_LINES - said - lines.size() - 1;
    int cautionRoom = Math.min(room, plan.cautions().isEmpty() ? 0 : 3);
    lines.addAll(0, shortened(goods, Math.max(2, Math.min(MOST_GOODS, room - cautionRoom - 1))));
    lines.add(0, goods.isEmpty() ? "Nothing to buy." : "To buy");
    List<String> more =
        wrapped("", "--full shows all of it; --show joints,pressures,checks,goods,sizes a part.");
    lines.addAll(cautions(SCREEN_LINES - said - lines.size() - more.size()));
    lines.addAll(more);
    return String.join("\n", lines) + "\n";
  }

  private List<String> goods() {
    int width = Math.min(screen.width(), 100);
    List<String> lines = new ArrayList<>();
    for (Bill.Item item : plan.items()) {
      String amount = item.extended().map(m -> m.getAmount().toPlainString()).orElse("no price");
      String what = "  " + item.quantity() + " x " + item.item() + "  " + item.description();
      lines.add(
          StringUtils.rightPad(
                  StringUtils.abbreviate(what, width - amount.length() - 2),
                  width - amount.length() - 1)
              + " "
              + amount);
    }
    plan.bill().unpriced().stream()
        .map(part -> wrapped("  ", "to be sourced, no price: " + part.words()))
        .forEach(lines::addAll);
    return lines;
  }

  private static List<String> shortened(List<String> lines, int most) {
    if (lines.size() <= most) {
      return lines;
    }
    List<String> shown = new ArrayList<>(lines.subList(0, Math.max(0, most - 1)));
    shown.add("  and " + (lines.size() - shown.size()) + " more: --show goods");
    return shown;
  }

  private List<String> water() {
    if (!plan.hydraulics().calculated()) {
      return List.of();
    }
    double sourcePsi = plan.hydraulics().requiredSourcePsi();
    String gives =
        plan.hydraulics()
            .sourcePsi()
            .map(psi -> ", and it gives " + units.pressure().of(psi))
            .orElse("");
    // Open water stands below every gauge: what its suction must bear is among the checks.
    String source =
        sourcePsi < 0 ? "" : "; the source must hold " + units.pressure().of(sourcePsi) + gives;
    return wrapped("", arrives() + source + ".");
  }

  private String arrives() {
    if (plan.hydraulics().deliveredPsi() < 0) {
      return "Pressure runs out on the way: at " + units.flow().of(plan.flowGpm());
    }
    List<OfLeg> legs = plan.asked().ofLegs();
    if (legs.isEmpty()) {
      return (plan.layout().endsApart() ? "Arrives where it is worst: " : "Arrives: ")
          + arrives(plan.flowGpm(), plan.hydraulics().deliveredPsi(), plan.needPsi());
    }
    return "Arrives: "
        + legs.stream()
            .limit(MOST_LEGS)
            .map(leg -> leg.leg() + " " + arrives(leg))
            .collect(Collectors.joining("; "))
        + (legs.size() > MOST_LEGS ? "; and at others" : "");
  }

  private String arrives(OfLeg leg) {
    return arrives(leg.flowGpm(), leg.needPsi() + leg.throttlePsi(), leg.needPsi());
  }

  private String arrives(double flowGpm, double psi, double needPsi) {
    return units.flow().of(flowGpm)
        + " at "
        + units.pressure().of(psi)
        + " ("
        + units.pressure().of(needPsi)
        + " needed)";
  }

  /**
   * What fails, then what warns, then what is near its limit; how well formulas agree comes last.
   */
  private List<String> told() {
    List<Check> told =
        Stream.of(
                plan.checks().stream().filter(check -> check.outcome() == Outcome.FAIL),
                plan.checks().stream().filter(check -> warns(check) && !isOfFormulas(check)),
                plan.checks().stream().filter(this::nearlyFails),
                plan.checks().stream().filter(check -> warns(check) && isOfFormulas(check)))
            .flatMap(one -> one)
            .toList();
    List<String> lines = new ArrayList<>();
    for (Check check : told.subList(0, Math.min(MOST_CHECKS, told.size()))) {
      String outcome = check.outcome() == Outcome.PASS ? "near its limit" : check.outcome().name();
      lines.add(
          StringUtils.abbreviate(
              "  "
                  + outcome
                  + "  "
                  + check.name()
                  + check.leg().map(leg -> ", " + leg).orElse("")
                  + ": "
                  + units.restated(check.note()),
              Math.min(screen.width(), 100)));
    }
    if (told.size() > MOST_CHECKS) {
      lines.add("  and more: --show checks");
    }
    return lines;
  }

  private static boolean warns(Check check) {
    return check.outcome() == Outcome.WARN;
  }

  private static boolean isOfFormulas(Check check) {
    return check.id() == CheckId.FRICTION_LAWS_AGREE;
  }

  /** Of what is measured; what was sought so that it meets its limit is no near thing. */
  private boolean nearlyFails(Check check) {
    return check.outcome() == Outcome.PASS
        && units.scale(check.unit()).isPresent()
        && check.limit() > 0
        && check.value() != check.limit()
        && Math.abs(check.value() - check.limit()) <= NEARLY * check.limit();
  }

  /** As many whole cautions as there is room for; the rest are counted. */
  private List<String> cautions(int room) {
    List<String> lines = new ArrayList<>();
    int shown = 0;
    for (String caution : plan.cautions()) {
      List<String> one = wrapped("  ", "- " + units.restated(caution));
      boolean last = shown == plan.cautions().size() - 1;
      if (lines.size() + one.size() + 1 + (last ? 0 : 1) > room) {
        break;
      }
      lines.addAll(one);
      shown++;
    }
    int left = plan.cautions().size() - shown;
    if (left > 0) {
      lines.add("  " + (shown == 0 ? "" : "and ") + left + " more: --show cautions");
    }
    if (!lines.isEmpty()) {
      lines.add(0, "Take care");
    }
    return lines;
  }

  private List<String> wrapped(String margin, String sentence) {
    return new Prose(screen).line(margin, sentence).toString().lines().toList();
  }
}
