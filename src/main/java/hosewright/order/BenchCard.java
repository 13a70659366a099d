package hosewright.order;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.order.SuppliedHose.Kind;
import hosewright.order.SuppliedHose.Sections;
import hosewright.quote.Departures;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the bench makes up, section by section, and the label of each section of hose supplied.
 *
 * @param makes kinds of section to make up; empty when all hose is bought coupled
 * @param parts what goes into them all, in words
 * @param labels one text for each section that is supplied, made up or bought
 * @param departures where quantities changed by hand part ways with the drawing, in sentences
 */
public record BenchCard(
    List<Make> makes, List<String> parts, List<String> labels, List<String> departures) {

  /**
   * So many like sections.
   *
   * @param cutFt hose to cut for each, ft, trimming included
   * @param coupledFt length of each when coupled, ft
   * @param inlet the end towards the source
   * @param testPsi service test pressure, psi: the least any of its parts is marked for; empty when
   *     a part has none in the catalogue
   */
  public record Make(
      int count,
      String hose,
      int cutFt,
      double coupledFt,
      Optional<End> inlet,
      Optional<End> outlet,
      OptionalDouble testPsi) {

    /** What seals the inlet, in words. */
    public String gasket() {
      return inlet.filter(End::carriesGasket).map(end -> "gasket for " + end).orElse("none");
    }
  }

  /** The card of a whole order, from the plans its quote froze and the quantities it sells. */
  public static BenchCard of(Order order, Quote quote, Catalogue catalogue) {
    return of(
        order,
        quote,
        quote.groups().stream().filter(group -> !group.optional()).toList(),
        catalogue);
  }

  /** The card of some groups of an order; sections are numbered over the whole order. */
  public static BenchCard of(Order order, Quote quote, List<Group> groups, Catalogue catalogue) {
    boolean several = quote.groups().size() > 1;
    int all =
        quote.groups().stream()
            .filter(group -> !group.optional())
            .flatMap(group -> SuppliedHose.of(quote, group).stream())
            .mapToInt(Sections::count)
            .sum();
    List<Make> makes = new ArrayList<>();
    List<String> labels = new ArrayList<>();
    int number = 0;
    for (Group group : quote.groups()) {
      List<Sections> supplied = group.optional() ? List.of() : SuppliedHose.of(quote, group);
      for (Sections sections : supplied) {
        Kind kind = sections.kind();
        OptionalDouble testPsi = testPsi(quote, kind.item(), catalogue);
        if (groups.contains(group) && kind.isMadeUp()) {
          makes.add(make(sections, testPsi));
        }
        for (int one = 0; one < sections.count(); one++) {
          number++;
          if (groups.contains(group)) {
            labels.add(
                label(order, kind, number, all, testPsi) + (several ? " | " + group.title() : ""));
          }
        }
      }
    }
    return new BenchCard(
        makes,
        makes.isEmpty() ? List.of() : parts(quote, groups, catalogue),
        labels,
        groups.stream().flatMap(group -> Departures.of(quote, group).stream()).toList());
  }

  private static Make make(Sections sections, OptionalDouble testPsi) {
    Kind kind = sections.kind();
    return new Make(
        sections.count(),
        kind.item(),
        kind.section().cutFt().orElseThrow(),
        kind.section().lengthFt(),
        kind.ends().upstream(),
        kind.ends().downstream(),
        testPsi);
  }

  private static OptionalDouble testPsi(Quote quote, String hose, Catalogue catalogue) {
    List<Item> marked =
        quote.lines().stream()
            .flatMap(line -> catalogue.item(line.goods().item()).stream())
            .filter(
                item ->
                    item.number().equals(hose)
                        || item.kind() == ItemKind.COUPLING
                        || item.kind() == ItemKind.ATTACHMENT)
            .toList();
    boolean hoseKnown =
        marked.stream()
            .anyMatch(
                item -> item.number().equals(hose) && item.rating().serviceTestPsi().isPresent());
    return hoseKnown
        ? marked.stream()
            .map(item -> item.rating().serviceTestPsi())
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .min()
        : OptionalDouble.empty();
  }

  private static List<String> parts(Quote quote, List<Group> groups, Catalogue catalogue) {
    List<String> parts = new ArrayList<>();
    for (QuoteLine line : groups.stream().flatMap(group -> quote.lines(group).stream()).toList()) {
      catalogue
          .item(line.goods().item())
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
                              line.quantity(),
                              line.goods().unit(),
                              line.goods().item(),
                              line.goods().description())));
    }
    return parts;
  }

  private static String label(Order order, Kind kind, int number, int all, OptionalDouble testPsi) {
    return String.format(
        Locale.ROOT,
        "%s | section %d of %d | %s in x %s ft | %s x %s | service test %s | tested ________ by"
            + " ____",
        order.number(),
        number,
        all,
        plain(kind.sizeIn()),
        plain(kind.section().lengthFt()),
        kind.ends().upstream().map(End::toString).orElse(""),
        kind.ends().downstream().map(End::toString).orElse(""),
        testPsi.isPresent() ? plain(testPsi.getAsDouble()) + " psi" : "as marked on the hose");
  }

  private static String plain(double number) {
    return String.format(Locale.ROOT, "%.3f", number).replaceAll("\\.?0+$", "");
  }
}
