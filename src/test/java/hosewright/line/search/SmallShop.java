package hosewright.line.search;

import hosewright.catalogue.Build;
import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Form;
import hosewright.catalogue.HoseFacts;
import hosewright.catalogue.HoseType;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.PriceRow;
import hosewright.catalogue.Rating;
import hosewright.catalogue.Selling;
import hosewright.catalogue.Sort;
import hosewright.catalogue.Stated;
import hosewright.catalogue.Stocking;
import hosewright.catalogue.UnitOfSale;
import hosewright.catalogue.WaterFacts;
import hosewright.line.model.LinePlan;
import hosewright.line.plan.DemoCatalogue;
import hosewright.line.plan.Planner;
import hosewright.thread.End;
import hosewright.thread.LocalThreads;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Builds small invented catalogues for tests, item by item. */
public final class SmallShop {
  public static final LocalDate DATE = LocalDate.of(2026, 11, 2);

  private final List<Item> items = new ArrayList<>();
  private final List<PriceRow> prices = new ArrayList<>();

  public Catalogue catalogue() {
    return new Catalogue(items, prices, List.of(), List.of());
  }

  public List<Item> items() {
    return List.copyOf(items);
  }

  public Planner planner() {
    Catalogue catalogue = catalogue();
    return new Planner(
        catalogue, catalogue.listPricesOn(DATE), DATE, CurrencyUnit.USD, LocalThreads.none());
  }

  /** Where the lines planned are found. */
  public Shop shop() {
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
    private Optional<HoseFacts.Diameters> hose = Optional.empty();
    private OptionalDouble lengthFt = OptionalDouble.empty();
    private String series = "";
    private HoseType hoseType = HoseType.UNKNOWN;
    private Optional<Sort> sort = Optional.empty();
    private Stated gated = Stated.UNKNOWN;
    private Stated shutoff = Stated.UNKNOWN;
    private OptionalInt channels = OptionalInt.empty();
    private OptionalDouble waterwayIn = OptionalDouble.empty();
    private OptionalDouble ratedFlowGpm = OptionalDouble.empty();
    private OptionalDouble ratedPressurePsi = OptionalDouble.empty();
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
      hose = Optional.of(new HoseFacts.Diameters(sizeIn, none, none));
      this.lengthFt = lengthFt > 0 ? OptionalDouble.of(lengthFt) : none;
      this.series = series;
      return this;
    }

    /** What its hose is made for; unknown unless said. */
    public Part type(HoseType type) {
      hoseType = type;
      return this;
    }

    /** What it is beyond its kind; unknown unless said. */
    public Part sort(Sort sort) {
      this.sort = Optional.of(sort);
      return this;
    }

    public Part gated(Stated gated) {
      this.gated = gated;
      return this;
    }

    public Part shutoff(Stated shutoff) {
      this.shutoff = shutoff;
      return this;
    }

    public Part channels(int channels) {
      this.channels = OptionalInt.of(channels);
      return this;
    }

    /** Its narrowest bore; unknown unless said. */
    public Part waterway(double boreIn) {
      waterwayIn = OptionalDouble.of(boreIn);
      return this;
    }

    /** What it is made to give, and at what pressure. */
    public Part rated(double flowGpm, double pressurePsi) {
      ratedFlowGpm = OptionalDouble.of(flowGpm);
      ratedPressurePsi = OptionalDouble.of(pressurePsi);
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
      OptionalDouble none = OptionalDouble.empty();
      items.add(
          new Item(
              number,
              number + " of the small shop",
              form(),
              hose.map(wide -> new HoseFacts(hoseType, series, wide, lengthFt, none, none)),
              new Build(
                  "brass",
                  weightLb,
                  Set.of("water"),
                  new Rating(workingPsi, serviceTestPsi, derating, vacuumInHg),
                  false,
                  markedTo,
                  gasketsFitted),
              new WaterFacts(
                  waterwayIn, lossCoefficient, lossPsi, none, none, ratedFlowGpm, ratedPressurePsi),
              new Selling(
                  kind == ItemKind.BULK_HOSE ? UnitOfSale.FOOT : UnitOfSale.EACH,
                  discontinued,
                  new Stocking("", 1, leadDays, onHand))));
      return SmallShop.this;
    }

    private Form form() {
      Form plain = Form.of(kind, ends);
      return new Form(kind, sort.orElse(plain.sort()), ends, gated, shutoff, channels);
    }
  }
}
