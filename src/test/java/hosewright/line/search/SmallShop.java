package hosewright.line.search;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.HoseFacts;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.PriceRow;
import hosewright.catalogue.Rating;
import hosewright.catalogue.Stocking;
import hosewright.catalogue.UnitOfSale;
import hosewright.line.model.LinePlan;
import hosewright.line.plan.DemoCatalogue;
import hosewright.line.plan.Planner;
import hosewright.thread.End;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Builds small invented catalogues for tests, item by item. */
public final class SmallShop {
  static final LocalDate DATE = LocalDate.of(2026, 11, 2);

  private final List<Item> items = new ArrayList<>();
  private final List<PriceRow> prices = new ArrayList<>();

  Catalogue catalogue() {
    return new Catalogue(items, prices, List.of(), List.of());
  }

  public List<Item> items() {
    return List.copyOf(items);
  }

  public Planner planner() {
    Catalogue catalogue = catalogue();
    return new Planner(catalogue, catalogue.listPricesOn(DATE), DATE, CurrencyUnit.USD);
  }

  /** Where the lines planned are found. */
  Shop shop() {
    Catalogue catalogue = catalogue();
    return Shop.at(catalogue.listPricesOn(DATE), catalogue, DATE, CurrencyUnit.USD);
  }

  /**
   * The plan at this shop's prices.
   *
   * @param answers field words and answers in turn
   */
  public LinePlan plan(String... answers) {
    return planner().plan(DemoCatalogue.job(answers));
  }

  /** What an item costs a piece from a quantity on. */
  public SmallShop price(String number, int fromQuantity, int cents) {
    prices.add(
        new PriceRow(
            number,
            LocalDate.of(2026, 1, 1),
            Optional.empty(),
            fromQuantity,
            Money.ofMinor(CurrencyUnit.USD, cents)));
    return this;
  }

  public Part part(String number, ItemKind kind, String... ends) {
    return new Part(number, kind, ends);
  }

  /** An item in the making: marked for water, unrated, without gaskets. */
  public final class Part {
    private final String number;
    private final ItemKind kind;
    private final List<End> ends = new ArrayList<>();
    private OptionalDouble workingPsi = OptionalDouble.empty();
    private OptionalDouble serviceTestPsi = OptionalDouble.empty();
    private final List<Rating.Derating> derating = new ArrayList<>();
    private OptionalDouble vacuumInHg = OptionalDouble.empty();
    private Optional<HoseFacts> hose = Optional.empty();
    private OptionalDouble lossCoefficient = OptionalDouble.empty();
    private OptionalDouble lossPsi = OptionalDouble.empty();
    private boolean discontinued;
    private int onHand = 100;
    private int leadDays;
    private double weightLb = 1;
    private String markedTo = "";
    private boolean gasketsFitted;

    private Part(String number, ItemKind kind, String... ends) {
      this.number = number;
      this.kind = kind;
      for (String end : ends) {
        this.ends.add(End.parse(end));
      }
    }

    boolean isDiscontinued() {
      return discontinued;
    }

    String number() {
      return number;
    }

    /** Hose of a size and length, or with no length what goes on hose of that size. */
    public Part hose(double sizeIn, double lengthFt, String series) {
      OptionalDouble none = OptionalDouble.empty();
      OptionalDouble length = lengthFt > 0 ? OptionalDouble.of(lengthFt) : none;
      hose = Optional.of(new HoseFacts(sizeIn, length, series, none, none, none, none));
      return this;
    }

    public Part working(double psi) {
      workingPsi = OptionalDouble.of(psi);
      return this;
    }

    public Part derated(double temperatureF, double psi) {
      derating.add(new Rating.Derating(temperatureF, psi));
      return this;
    }

    public Part serviceTest(double psi) {
      serviceTestPsi = OptionalDouble.of(psi);
      return this;
    }

    Part vacuum() {
      vacuumInHg = OptionalDouble.of(29);
      return this;
    }

    public Part lossCoefficient(double k) {
      lossCoefficient = OptionalDouble.of(k);
      return this;
    }

    public Part loss(double psi) {
      lossPsi = OptionalDouble.of(psi);
      return this;
    }

    public Part discontinued(int left) {
      discontinued = true;
      onHand = left;
      return this;
    }

    /** So many on the shelf, more after so many days. */
    Part stocked(int left, int days) {
      onHand = left;
      leadDays = days;
      return this;
    }

    Part weighs(double lb) {
      weightLb = lb;
      return this;
    }

    Part markedTo(String standard) {
      markedTo = standard;
      return this;
    }

    public Part gasketsFitted() {
      gasketsFitted = true;
      return this;
    }

    /** Puts it on the shelf at a price. */
    public SmallShop at(int cents) {
      unpriced();
      return price(number, 1, cents);
    }

    /** Puts it on the shelf without a price in force. */
    public SmallShop unpriced() {
      items.add(
          new Item(
              number,
              number + " of the small shop",
              kind,
              ends,
              kind == ItemKind.BULK_HOSE ? UnitOfSale.FOOT : UnitOfSale.EACH,
              weightLb,
              "brass",
              Set.of("water"),
              new Rating(workingPsi, serviceTestPsi, derating, vacuumInHg),
              hose,
              lossCoefficient,
              lossPsi,
              OptionalDouble.empty(),
              OptionalDouble.empty(),
              false,
              discontinued,
              markedTo,
              gasketsFitted,
              new Stocking("", 1, leadDays, onHand)));
      return SmallShop.this;
    }
  }
}
