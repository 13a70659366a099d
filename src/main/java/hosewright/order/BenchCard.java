package hosewright.order;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.line.LinePlan;
import hosewright.line.LinePlan.PlanItem;
import hosewright.line.LinePlan.RunPart;
import hosewright.line.LinePlan.SectionCount;
import hosewright.quote.Quote;
import hosewright.quote.Quote.QuoteLine;
import hosewright.thread.End;
import hosewright.thread.Gender;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What the bench makes up, section by section, and the label of each section of hose.
 *
 * @param makes kinds of section to make up; empty when all hose is bought coupled
 * @param parts what goes into them all, in words
 * @param labels one text for each section of hose, made up or bought
 */
public record BenchCard(List<Make> makes, List<String> parts, List<String> labels) {

  /**
   * So many like sections.
   *
   * @param cutFt hose to cut for each, ft, trimming included
   * @param coupledFt length of each when coupled, ft
   * @param inlet the end towards the source
   * @param gasket what seals the inlet, in words
   * @param testPsi service test pressure, psi: the least any of its parts is marked for; empty when
   *     a part has none in the catalogue
   */
  public record Make(
      int count,
      String hose,
      int cutFt,
      double coupledFt,
      String inlet,
      String outlet,
      String gasket,
      OptionalDouble testPsi) {}

  /** The card of an order, from the plan its quote froze. */
  public static BenchCard of(Order order, Quote quote, Catalogue catalogue) {
    LinePlan plan = quote.plan();
    List<Make> makes = new ArrayList<>();
    List<String> labels = new ArrayList<>();
    int all = plan.sectionsInAll();
    for (Laid laid : laid(plan)) {
      SectionCount section = laid.section();
      RunPart part = laid.part();
      OptionalDouble testPsi = testPsi(quote, part, catalogue);
      if (madeUp(plan, part)) {
        makes.add(
            new Make(
                section.count(),
                part.item(),
                (int) Math.ceil(section.lengthFt()) + trimFt(plan, part),
                section.lengthFt(),
                part.upstream().map(End::toString).orElse(""),
                part.downstream().map(End::toString).orElse(""),
                gasket(part),
                testPsi));
      }
      for (int one = 0; one < section.count(); one++) {
        labels.add(label(order, laid, labels.size() + 1, all, testPsi));
      }
    }
    return new BenchCard(makes, makes.isEmpty() ? List.of() : parts(quote, catalogue), labels);
  }

  /** Like sections, and one of the parts of the run that they are. */
  private record Laid(double sizeIn, SectionCount section, RunPart part) {}

  private static List<Laid> laid(LinePlan plan) {
    int wye = plan.layout().attackLines().map(a -> a.wyePlace()).orElse(plan.run().size());
    List<Laid> laid = new ArrayList<>();
    pair(plan.sizeIn(), plan.sections(), hoses(plan, plan.run().subList(0, wye)), laid);
    plan.layout()
        .attackLines()
        .ifPresent(
            attack ->
                pair(
                    attack.sizeIn(),
                    attack.sections(),
                    hoses(plan, plan.run().subList(wye, plan.run().size())),
                    laid));
    return laid;
  }

  private static void pair(
      double sizeIn, List<SectionCount> sections, List<RunPart> hoses, List<Laid> laid) {
    for (int i = 0; i < Math.min(sections.size(), hoses.size()); i++) {
      laid.add(new Laid(sizeIn, sections.get(i), hoses.get(i)));
    }
  }

  /**
   * The hose parts among some, each length once however a device parts it; a plan lists its
   * sections in the same order.
   */
  private static List<RunPart> hoses(LinePlan plan, List<RunPart> parts) {
    Set<String> told = new HashSet<>();
    return parts.stream()
        .filter(part -> part.item().isEmpty() || told.add(part.description()))
        .filter(part -> !part.item().isEmpty())
        .filter(
            part ->
                plan.adapters().stream().noneMatch(adapter -> adapter.item().equals(part.item())))
        .filter(part -> plan.items().stream().anyMatch(item -> item.item().equals(part.item())))
        .toList();
  }

  private static Optional<PlanItem> byTheFoot(LinePlan plan, RunPart part) {
    return plan.items().stream()
        .filter(item -> item.item().equals(part.item()) && item.unit().equals("foot"))
        .findFirst();
  }

  private static boolean madeUp(LinePlan plan, RunPart part) {
    return byTheFoot(plan, part).isPresent();
  }

  /** Hose trimmed from each section, ft: what is cut beyond the coupled lengths, evenly. */
  private static int trimFt(LinePlan plan, RunPart part) {
    PlanItem bulk = byTheFoot(plan, part).orElseThrow();
    int cut = bulk.quantity() - bulk.spare();
    int coupled = 0;
    int count = 0;
    for (Laid laid : laid(plan)) {
      if (laid.part().item().equals(part.item())) {
        coupled += (int) Math.ceil(laid.section().lengthFt()) * laid.section().count();
        count += laid.section().count();
      }
    }
    return count == 0 ? 0 : (cut - coupled) / count;
  }

  private static String gasket(RunPart part) {
    return part.upstream()
        .filter(end -> end.gender() == Gender.FEMALE || end.gender() == Gender.SEXLESS)
        .map(end -> "gasket for " + end)
        .orElse("none");
  }

  private static OptionalDouble testPsi(Quote quote, RunPart part, Catalogue catalogue) {
    List<Item> marked =
        quote.lines().stream()
            .flatMap(line -> catalogue.item(line.item()).stream())
            .filter(
                item ->
                    item.number().equals(part.item())
                        || item.kind() == ItemKind.COUPLING
                        || item.kind() == ItemKind.ATTACHMENT)
            .toList();
    boolean hoseKnown =
        marked.stream()
            .anyMatch(
                item ->
                    item.number().equals(part.item())
                        && item.rating().serviceTestPsi().isPresent());
    return hoseKnown
        ? marked.stream()
            .map(item -> item.rating().serviceTestPsi())
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .min()
        : OptionalDouble.empty();
  }

  private static List<String> parts(Quote quote, Catalogue catalogue) {
    List<String> parts = new ArrayList<>();
    for (QuoteLine line : quote.lines()) {
      catalogue
          .item(line.item())
          .map(Item::kind)
          .filter(
              kind ->
                  kind == ItemKind.BULK_HOSE
                      || kind == ItemKind.COUPLING
                      || kind == ItemKind.ATTACHMENT
                      || kind.isWork())
          .ifPresent(
              kind ->
                  parts.add(
                      "%d %s %s, %s"
                          .formatted(
                              line.quantity(), line.unit(), line.item(), line.description())));
    }
    return parts;
  }

  private static String label(Order order, Laid laid, int number, int all, OptionalDouble testPsi) {
    return String.format(
        Locale.ROOT,
        "%s | section %d of %d | %s in x %s ft | %s x %s | service test %s | tested ________ by ____",
        order.number(),
        number,
        all,
        plain(laid.sizeIn()),
        plain(laid.section().lengthFt()),
        laid.part().upstream().map(End::toString).orElse(""),
        laid.part().downstream().map(End::toString).orElse(""),
        testPsi.isPresent() ? plain(testPsi.getAsDouble()) + " psi" : "as marked on the hose");
  }

  private static String plain(double number) {
    return String.format(Locale.ROOT, "%.3f", number).replaceAll("\\.?0+$", "");
  }
}
