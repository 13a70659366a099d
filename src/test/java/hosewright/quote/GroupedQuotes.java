package hosewright.quote;

import hosewright.catalogue.Build;
import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Form;
import hosewright.catalogue.HoseFacts;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.PriceRow;
import hosewright.catalogue.Rating;
import hosewright.catalogue.Selling;
import hosewright.catalogue.Stocking;
import hosewright.catalogue.UnitOfSale;
import hosewright.catalogue.WaterFacts;
import hosewright.line.goods.GoodsPlan;
import hosewright.line.model.Bill;
import hosewright.line.model.LinePlan;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.DealerTerms;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Quotes of several groups over a small invented catalogue with price breaks. */
public final class GroupedQuotes {
  public static final LocalDate DATE = LocalDate.of(2026, 11, 2);

  /** Price of one by the least quantity it is for, item by item. */
  public static final Map<String, Map<Integer, String>> BREAKS =
      Map.of(
          "HOSE", Map.of(1, "100.05", 10, "95.55", 40, "90.10"),
          "ADAPTER", Map.of(1, "33.33"),
          "NOZZLE", Map.of(1, "251.99", 4, "240.01", 8, "239.07"),
          "GASKET", Map.of(1, "0.97", 50, "0.61"),
          "WRENCH", Map.of(1, "15.40", 3, "14.95"));

  private static final Catalogue CATALOGUE =
      new Catalogue(
          BREAKS.keySet().stream().sorted().map(GroupedQuotes::item).toList(),
          BREAKS.entrySet().stream()
              .flatMap(
                  item ->
                      item.getValue().entrySet().stream()
                          .map(
                              step ->
                                  new PriceRow(
                                      item.getKey(),
                                      LocalDate.of(2026, 1, 1),
                                      Optional.empty(),
                                      step.getKey(),
                                      usd(step.getValue()))))
              .toList(),
          List.of(),
          List.of());

  private GroupedQuotes() {}

  public static Money usd(String amount) {
    return Money.of(CurrencyUnit.USD, new BigDecimal(amount));
  }

  /** A group of parts, its number set by its place among the others. */
  public static Group parts(String title, int count, boolean optional, Map<String, Integer> goods) {
    return new Group(
        Group.FIRST,
        new Group.Heading(title, count, optional),
        "title: " + title + "\n",
        plan(goods));
  }

  /** A quote of these groups for a buyer who pays the list less a share. */
  public static Quote of(Amendments amendments, String discount, Group... groups) {
    List<Group> numbered = new ArrayList<>();
    for (Group group : groups) {
      numbered.add(new Group(numbered.size() + 1, group.heading(), group.jobYaml(), group.plan()));
    }
    Customer customer =
        new Customer(
            "MILL",
            "An invented mill",
            "Port Harlow",
            new Customer.Pricing("trade", new BigDecimal(discount), Map.of()),
            new Customer.Taxation("Harlow tax", new BigDecimal("0.0625"), Optional.empty()),
            "collect");
    return new QuoteMaker(CATALOGUE, new DealerTerms(List.of(), Map.of()))
        .make(
            new QuoteMaker.Draft(
                new Quote.Name("Q-000001", 1),
                customer,
                DATE,
                Basis.of("a fit-out", Optional.empty(), numbered),
                amendments,
                Instant.parse("2026-11-02T10:00:00Z")),
            new PriceList(CATALOGUE, customer, DATE));
  }

  private static LinePlan plan(Map<String, Integer> goods) {
    List<Bill.Item> items = new ArrayList<>();
    new LinkedHashMap<>(goods)
        .forEach(
            (item, quantity) ->
                items.add(
                    new Bill.Item(
                        item,
                        "an invented " + item,
                        quantity,
                        0,
                        "each",
                        Optional.of(usd(BREAKS.get(item).get(1))),
                        quantity)));
    return GoodsPlan.of("Parts.", items, List.of(), List.of(), DATE, CurrencyUnit.USD);
  }

  private static Item item(String number) {
    return new Item(
        number,
        "an invented " + number,
        Form.of(ItemKind.SERVICE, List.of()),
        Optional.<HoseFacts>empty(),
        new Build("", 1, Set.of("water"), Rating.NONE, false, "", true),
        WaterFacts.NONE,
        new Selling(UnitOfSale.EACH, false, new Stocking("SUP", 1, 3, 5)));
  }
}
