package hosewright.desk.purchase;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.desk.Refusals;
import hosewright.desk.kit.CountedParts;
import hosewright.desk.words.WantedLine;
import hosewright.line.goods.GoodsPlan;
import hosewright.line.model.Bill;
import hosewright.line.model.LinePlan;
import hosewright.quote.ExtraLine;
import hosewright.quote.ExtraLine.Inclusion;
import hosewright.quote.LinePrices;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * A list of parts as a quote sells it.
 *
 * @param plan what is bought of the catalogue; nothing is laid
 * @param free lines in free text, at their own prices
 */
record PartsGroup(LinePlan plan, List<ExtraLine> free) {

  /**
   * Reads parts as a seller writes them; an item named twice is one line.
   *
   * @param prices what the buyer pays
   * @param refusals told everything that cannot be used
   */
  static PartsGroup read(
      List<String> texts,
      WantedLine wanted,
      Catalogue catalogue,
      LinePrices prices,
      LocalDate date,
      Refusals refusals) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    List<ExtraLine> free = new ArrayList<>();
    for (String text : texts) {
      refusals
          .read(() -> wanted.read("add", text, Inclusion.INCLUDED, Optional.empty()))
          .ifPresent(
              line ->
                  line.item()
                      .ifPresentOrElse(
                          item -> counts.merge(item, line.quantity(), Integer::sum),
                          () -> free.add(line)));
    }
    List<Item> items =
        counts.keySet().stream().flatMap(number -> catalogue.item(number).stream()).toList();
    List<Bill.Item> bought = new ArrayList<>();
    for (Item item : items) {
      int count = counts.get(item.number());
      prices
          .of(item.number(), count)
          .ifPresentOrElse(
              priced ->
                  bought.add(CountedParts.bought(item, count, Optional.of(priced.unitPrice()))),
              () ->
                  refusals.add(
                      "add",
                      item.number(),
                      "an item with a price in force on the day; 'quote ask' asks suppliers"));
    }
    CurrencyUnit currency = catalogue.currencyNeeded();
    return new PartsGroup(
        GoodsPlan.of(
            summary(counts, free), bought, List.of(), new PartsEnds(items).told(), date, currency),
        free);
  }

  private static String summary(Map<String, Integer> counts, List<ExtraLine> free) {
    int pieces =
        counts.values().stream().mapToInt(Integer::intValue).sum()
            + free.stream().mapToInt(ExtraLine::quantity).sum();
    return "Parts alone: %s, %s."
        .formatted(
            pieces == 1 ? "1 piece" : pieces + " pieces",
            counts.size() + free.size() == 1
                ? "of one kind"
                : "of " + (counts.size() + free.size()) + " kinds");
  }
}
