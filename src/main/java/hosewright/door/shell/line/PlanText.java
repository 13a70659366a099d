package hosewright.door.shell.line;

import hosewright.catalogue.MoneyWords;
import hosewright.csv.PlainNumber;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.line.model.Bill;
import hosewright.line.model.Check;
import hosewright.line.model.Joint;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.SectionCount;
import hosewright.line.model.Unpriced;
import hosewright.measure.Scale;
import hosewright.measure.UnitSystem;
import hosewright.paper.drawing.LineDrawing;
import hosewright.paper.quote.PartNames;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.text.WordUtils;

/** A plan as a person reads it at a terminal. */
public final class PlanText {
  private static final int MOST_INSTEAD = 5;

  private final LinePlan plan;
  private final Screen screen;
  private final UnitSystem units;
  private final StringBuilder text = new StringBuilder();

  private PlanText(LinePlan plan, Screen screen, UnitSystem units) {
    this.plan = plan;
    this.screen = screen;
    this.units = units;
  }

  /** All of the plan. */
  public static String of(LinePlan plan, Screen screen) {
    return of(plan, screen, UnitSystem.US);
  }

  static String of(LinePlan plan, Screen screen, UnitSystem units) {
    return of(plan, screen, units, EnumSet.allOf(PlanSections.class));
  }

  /** The answer on at most a screen. */
  public static String brief(LinePlan plan, Screen screen) {
    return of(plan, screen, UnitSystem.US, Set.of());
  }

  /** The answer on at most a screen where no part is named; else the verdict and those parts. */
  static String of(LinePlan plan, Screen screen, UnitSystem units, Set<PlanSections> parts) {
    PlanText writer = new PlanText(plan, screen, units);
    writer.verdict(parts.isEmpty() ? MOST_INSTEAD : Integer.MAX_VALUE);
    if (parts.isEmpty()) {
      writer.text.append(
          new PlanBrief(plan, screen, units).below(writer.text.toString().lines().toList().size()));
    }
    if (!plan.joints().isEmpty()) {
      parts.stream().sorted().forEach(writer::part);
    }
    if (parts.contains(PlanSections.ACCESSORIES)) {
      writer.sentences(
          "Accessories, where each stands and why",
          plan.bill().accessories().stream().map(one -> one.sentence() + ".").toList());
    }
    if (parts.contains(PlanSections.CAUTIONS)) {
      writer.sentences("Take care", plan.cautions());
    }
    return writer.text.toString().stripTrailing();
  }

  private void part(PlanSections part) {
    switch (part) {
      case LINE -> drawings();
      case JOINTS -> joints();
      case PRESSURES -> {
        pressure();
        appliances();
      }
      case CHECKS -> checks();
      case GOODS -> goods();
      case SIZES -> alternatives();
      case ACCESSORIES, CAUTIONS -> {
        // Told below, also of a plan without a line.
      }
    }
  }

  private void drawings() {
    int width = Math.min(screen.width(), 110);
    if (plan.layout().branched()) {
      section("Where the legs run", LineDrawing.legs(plan, units, width).stripTrailing());
    }
    section("The line", LineDrawing.text(plan, width).stripTrailing());
  }

  private void verdict(int mostInstead) {
    sentence(plan.summary());
    if (plan.feasible()) {
      sentence(
          String.format(
              Locale.ROOT, "This line does it: %s for %s.", laid(), plan.bill().headline()));
      ownAndSpare();
      plan.layout().stations().forEach(sentence -> sentence(sentence + "."));
    } else {
      sentence("NO SAFE PLAN. Limited by " + plan.limitedBy().orElse("an unknown check") + ".");
      if (plan.hose().isPresent()) {
        sentence("The nearest line: " + laid() + " for " + plan.bill().headline() + ".");
      }
      sentences("What would do instead", first(mostInstead, plan.instead()));
    }
  }

  private static List<String> first(int most, List<String> sentences) {
    return sentences.subList(0, Math.min(most, sentences.size()));
  }

  private void ownAndSpare() {
    List<SectionCount> own = plan.layout().ownSections();
    if (!own.isEmpty()) {
      sentence("Of these the customer has " + counted(own) + " already.");
    }
    List<SectionCount> spare =
        plan.bill().spares().stream()
            .map(one -> new SectionCount(one.section().lengthFt(), one.count()))
            .toList();
    if (!spare.isEmpty()) {
      sentence("Bought to spare, not laid: " + counted(spare) + ".");
    }
  }

  private String counted(List<SectionCount> sections) {
    return sections.stream()
        .map(s -> s.count() + " x " + units.length().of(s.lengthFt()))
        .collect(Collectors.joining(" + "));
  }

  private String laid() {
    if (plan.layout().branched() || !plan.asked().ofLegs().isEmpty()) {
      return plan.layout().hoseLegs().stream()
          .map(leg -> leg.name() + " " + hose(leg))
          .collect(Collectors.joining("; "));
    }
    Leg first = plan.layout().firstHoseLeg().orElseThrow();
    String abreast = first.lines() > 1 ? first.lines() + " lines, in all " : "";
    return abreast
        + hose(first)
        + plan.layout()
            .branchLeg()
            .map(
                leg ->
                    " to the wye, and behind it "
                        + leg.lines()
                        + " attack lines, in all "
                        + hose(leg)
                        + ",")
            .orElse("");
  }

  private String hose(Leg leg) {
    Leg.Hose hose = leg.hose().orElseThrow();
    return String.format(
        Locale.ROOT,
        "%s of %s in hose with %s in couplings (%s)",
        counted(leg.sectionCounts()),
        PlainNumber.of(hose.sizeIn()),
        PlainNumber.of(hose.couplingSizeIn()),
        hose.series());
  }

  private void joints() {
    boolean apart = plan.layout().branched();
    Table table =
        (apart
                ? Table.of("leg", "#", "from", "into", "times", "seal", "comes apart")
                : Table.of("#", "from", "into", "times", "seal", "comes apart"))
            .numbers(apart ? new int[] {1, 4} : new int[] {0, 3});
    PartNames names = new PartNames();
    int number = 1;
    for (Joint joint : plan.joints()) {
      List<Object> cells = new ArrayList<>(apart ? List.of(joint.leg()) : List.of());
      cells.addAll(
          List.of(
              number++,
              side(joint.upstream(), names),
              side(joint.downstream(), names),
              joint.count(),
              joint.fit().seal().name().toLowerCase(Locale.ROOT),
              joint.fit().removable() ? "yes" : "no"));
      table.row(cells.toArray());
    }
    section("Joints, source first", table.on(screen));
  }

  private static String side(Joint.Side side, PartNames names) {
    return side.end() + " (" + names.of(side) + ")";
  }

  private void pressure() {
    if (plan.hydraulics().calculated()) {
      HydraulicsText hydraulics = new HydraulicsText(plan, screen, units);
      section(hydraulics.title(), hydraulics.body());
    } else {
      section("Pressure", "  " + plan.hydraulics().frictionBasis());
    }
  }

  private void appliances() {
    if (!plan.asked().ofLegs().isEmpty() && plan.hydraulics().calculated()) {
      section("At each appliance", AppliancesText.of(plan, screen, units));
    }
  }

  private void checks() {
    Table table = Table.of("check", "", "value", "limit", "unit", "what it means").numbers(2, 3);
    for (Check check : plan.checks()) {
      table.row(
          check.leg().map(leg -> check.name() + ", " + leg).orElse(check.name()),
          check.outcome() == Check.Outcome.PASS ? "ok" : check.outcome().name(),
          check.isYesOrNo() ? "" : figure(check.value(), check.unit()),
          check.isYesOrNo() ? "" : figure(check.limit(), check.unit()),
          units.scale(check.unit()).map(Scale::unit).orElse(check.unit()),
          units.restated(check.note()));
    }
    section("Checks", table.on(screen));
  }

  private void goods() {
    Table table = Table.of("item", "description", "qty", "unit", "each", "amount").numbers(2, 4, 5);
    for (Bill.Item item : plan.items()) {
      table.row(
          item.item(),
          item.spare() == 0 ? item.description() : item.description() + extra(item),
          item.quantity(),
          item.unit(),
          item.unitPrice().map(m -> m.getAmount().toPlainString()).orElse("?"),
          item.extended().map(m -> m.getAmount().toPlainString()).orElse("?"));
    }
    section("Goods, prices of " + plan.bill().date(), table.on(screen));
    text.append("  Total ").append(plan.bill().headline()).append(" before freight and tax.\n");
    sentences(
        "Still to be sourced, not priced",
        plan.bill().unpriced().stream().map(Unpriced::words).toList());
  }

  /** Why more is bought than is used. */
  private static String extra(Bill.Item item) {
    String unit = item.unit().equals("each") ? "" : " " + item.unit();
    return String.format(
        Locale.ROOT,
        " (%,d%s extra: cheaper at the %,d%s price)",
        item.spare(),
        unit,
        item.quantity(),
        unit);
  }

  private void alternatives() {
    if (plan.alternatives().isEmpty()) {
      return;
    }
    Table table = Table.of("hose", "series", "total", "why not").numbers(2);
    for (LinePlan.Alternative other : plan.alternatives()) {
      table.row(
          PlainNumber.of(other.hose().sizeIn()) + " in",
          other.hose().series(),
          MoneyWords.of(other.total()),
          units.restated(other.why()));
    }
    section("Other sizes", table.on(screen));
  }

  private void section(String title, String body) {
    text.append('\n').append(title).append('\n').append(body).append('\n');
  }

  private void sentences(String title, List<String> sentences) {
    if (!sentences.isEmpty()) {
      text.append('\n').append(title).append('\n');
      sentences.forEach(sentence -> text.append(wrapped("- " + sentence, "    ")));
    }
  }

  private void sentence(String sentence) {
    text.append(wrapped(sentence, "  ").substring(2));
  }

  private String wrapped(String measured, String margin) {
    String sentence = units.restated(measured);
    int width = Math.max(30, Math.min(screen.width(), 100) - margin.length());
    return "  " + WordUtils.wrap(sentence, width, "\n" + margin, false) + "\n";
  }

  private String figure(double us, String unit) {
    double value = units.scale(unit).map(scale -> scale.in(us)).orElse(us);
    return Math.abs(value) >= 100 || value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%.2f", value);
  }
}
