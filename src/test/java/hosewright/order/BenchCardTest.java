package hosewright.order;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CatalogueFiles;
import hosewright.line.goods.GoodsPlan;
import hosewright.line.model.Bill;
import hosewright.line.model.Layout;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Node;
import hosewright.line.model.Owner;
import hosewright.line.model.Part;
import hosewright.line.model.Role;
import hosewright.quote.Amendments;
import hosewright.quote.Basis;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import hosewright.quote.Totals;
import hosewright.quote.terms.Customer;
import hosewright.thread.End;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** All hose, numbers and prices are invented. */
final class BenchCardTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 2);
  private static final End FEMALE = End.parse("2.5 NH female swivel");
  private static final End MALE = End.parse("2.5 NH male");
  private static final Money EACH = Money.parse("USD 2.00");

  private final List<Part> laid = new ArrayList<>();
  private final List<Bill.Item> bought = new ArrayList<>();
  private final List<Bill.Spare> spares = new ArrayList<>();
  private final List<QuoteLine> lines = new ArrayList<>();
  private int abreast = 1;

  private Part sections(Owner owner, String item, int count, double lengthFt, int cutFt) {
    return new Part(
        Role.HOSE,
        owner,
        new Part.Goods(Optional.of(item).filter(number -> !number.isEmpty()), "anything at all"),
        new Part.Ends(Optional.of(FEMALE), Optional.of(MALE)),
        count,
        Optional.of(section(lengthFt, cutFt)),
        new Part.Flow(2.5, 0, 0));
  }

  private static Part.Section section(double lengthFt, int cutFt) {
    return new Part.Section(lengthFt, cutFt == 0 ? Optional.empty() : Optional.of(cutFt));
  }

  /** The plan buys so many of an item, and the quote sells so many. */
  private void sold(String item, int planned, int sold) {
    bought.add(new Bill.Item(item, "d", planned, 0, "each", Optional.of(EACH), 1));
    if (sold > 0) {
      lines.add(
          new QuoteLine(
              lines.size() + 1,
              new QuoteLine.Goods(item, "d", "each", "EA", 1, true),
              sold,
              new QuoteLine.Price(EACH, EACH, EACH.multipliedBy(sold), List.of(), Optional.empty()),
              Optional.empty()));
    }
  }

  private BenchCard card() {
    Catalogue catalogue = new CatalogueFiles().read();
    return BenchCard.of(order(), quote(), catalogue);
  }

  private static Order order() {
    return new Order(
        "O-000001",
        new Order.Sold("Q-000001", 1, "Fairlead Boatyard", "Quay line"),
        new Order.Timing(DAY, DAY, Instant.EPOCH, "tom"),
        Optional.empty(),
        List.of(),
        List.of());
  }

  private Quote quote() {
    Money zero = Money.zero(CurrencyUnit.USD);
    Customer buyer =
        new Customer(
            "B",
            "Fairlead Boatyard",
            "",
            new Customer.Pricing("trade", BigDecimal.ZERO, Map.of()),
            new Customer.Taxation("", BigDecimal.ZERO, Optional.empty()),
            "");
    return new Quote(
        new Quote.Name("Q-000001", 1),
        Quote.Status.ACCEPTED,
        buyer,
        new Quote.Validity(DAY, DAY, 0, Instant.EPOCH),
        new Basis("Quay line", "", plan(), Optional.empty()),
        new Quote.Offer(lines, List.of(), Amendments.NONE),
        new Totals(zero, zero, zero, zero, new Totals.Charging("", false, BigDecimal.ZERO, "")));
  }

  private LinePlan plan() {
    Part outlet = end(Role.SOURCE, Optional.empty(), Optional.of(MALE));
    Part monitor = end(Role.APPLIANCE, Optional.of(FEMALE), Optional.empty());
    Leg leg =
        new Leg(
            "line",
            "source",
            "appliance",
            abreast,
            Optional.of(new Leg.Hose(2.5, 2.5, "any", 2.5, 430, 500)),
            new Leg.Water(250, 0, 0, new Leg.Friction(0, "", Optional.empty()), 0, 0),
            laid);
    LinePlan goods = GoodsPlan.of("", bought, List.of(), List.of(), DAY, CurrencyUnit.USD);
    return new LinePlan(
        goods.asked(),
        goods.answer(),
        new Layout(
            List.of(new Node("source", outlet, 1), new Node("appliance", monitor, 1)),
            List.of(leg),
            List.of(),
            List.of()),
        goods.hydraulics(),
        List.of(),
        new Bill(bought, List.of(), goods.total(), DAY, goods.bill().gaskets(), spares, List.of()),
        goods.weighed());
  }

  private static Part end(Role role, Optional<End> upstream, Optional<End> downstream) {
    return new Part(
        role,
        Owner.BUYER,
        new Part.Goods(Optional.empty(), "hose"),
        new Part.Ends(upstream, downstream),
        1,
        Optional.empty(),
        new Part.Flow(0, 0, 0));
  }

  @Test
  void sections_that_the_customer_has_are_neither_made_nor_labelled() {
    laid.add(sections(Owner.BUYER, "", 4, 100, 0));
    laid.add(sections(Owner.DEALER, "B25", 1, 100, 101));
    sold("B25", 101, 101);

    BenchCard card = card();

    assertThat(card.makes())
        .singleElement()
        .satisfies(
            make -> {
              assertThat(make.count()).isEqualTo(1);
              assertThat(make.cutFt()).isEqualTo(101);
              assertThat(make.coupledFt()).isEqualTo(100);
              assertThat(make.gasket()).isEqualTo("gasket for 2.5 NH female swivel");
            });
    assertThat(card.labels()).singleElement().asString().contains("section 1 of 1", "100 ft");
    assertThat(card.departures()).isEmpty();
  }

  @Test
  void sections_side_by_side_are_made_for_every_line() {
    abreast = 2;
    laid.add(sections(Owner.DEALER, "B25", 3, 50, 51));
    sold("B25", 306, 306);

    assertThat(card().makes()).singleElement().extracting(BenchCard.Make::count).isEqualTo(6);
    assertThat(card().labels()).hasSize(6);
  }

  @Test
  void spare_sections_are_made_up_and_labelled_with_the_rest() {
    laid.add(sections(Owner.DEALER, "B25", 3, 50, 51));
    spares.add(
        new Bill.Spare(
            "B25", 2.5, new Part.Ends(Optional.of(FEMALE), Optional.of(MALE)), section(50, 51), 1));
    sold("B25", 204, 204);

    assertThat(card().makes()).singleElement().extracting(BenchCard.Make::count).isEqualTo(4);
    assertThat(card().labels()).hasSize(4);
  }

  @Test
  void a_quantity_of_coupled_hose_set_by_hand_is_what_is_labelled_and_the_card_says_so() {
    laid.add(sections(Owner.DEALER, "H-50", 9, 50, 0));
    sold("H-50", 9, 30);

    BenchCard card = card();

    assertThat(card.makes()).isEmpty();
    assertThat(card.labels()).hasSize(30);
    assertThat(card.departures())
        .containsExactly(
            "H-50: 30 sold, 9 planned; drawing, joints and the list to assemble show the plan.");
  }

  @Test
  void hose_by_the_foot_set_by_hand_makes_as_many_whole_sections_as_it_gives() {
    laid.add(sections(Owner.DEALER, "B25", 3, 100, 101));
    sold("B25", 303, 210);

    assertThat(card().makes()).singleElement().extracting(BenchCard.Make::count).isEqualTo(2);
    assertThat(card().labels()).hasSize(2);
    assertThat(card().departures()).hasSize(1);
  }

  @Test
  void hose_left_out_by_hand_is_not_labelled() {
    laid.add(sections(Owner.DEALER, "H-50", 9, 50, 0));
    sold("H-50", 9, 0);

    assertThat(card().labels()).isEmpty();
    assertThat(card().departures()).singleElement().asString().startsWith("H-50: 0 sold");
  }

  @Test
  void what_a_part_is_does_not_hang_on_its_description() {
    laid.add(sections(Owner.DEALER, "ATTACK-JACKETED", 2, 50, 0));
    sold("ATTACK-JACKETED", 2, 2);

    assertThat(card().labels()).hasSize(2);
  }
}
