package hosewright.line.search;

import hosewright.catalogue.HoseType;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.Stated;
import hosewright.job.Job;
import hosewright.job.layout.LayoutJob;
import hosewright.thread.End;
import hosewright.thread.Gender;
import java.util.List;
import java.util.Random;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.stream.Stream;

/** Small random catalogues, and jobs that make their parts matter. */
public final class RandomShop {
  /** Ends that meet, almost meet, jam or need an adapter. */
  /** Of what is made for work, the first series of a shop is for any, the others to discharge. */
  private static final List<HoseType> TYPES =
      Stream.of(HoseType.values()).filter(type -> type != HoseType.DISCHARGE).toList();

  private static final List<String> ENDS =
      List.of(
          "1.5 NH male",
          "1.5 NH female",
          "1.5 NH female swivel",
          "2.5 NH male",
          "2.5 NH female swivel",
          "1.5 NPSH male",
          "1.5 NPSH female swivel",
          "1.5 NPT male",
          "1.5 NPT female",
          "2.5 Storz",
          "2.5 QST male",
          "2.5 QST female swivel");

  private static final List<String> PAIRS =
      List.of(
          "1.5 NH female swivel x 1.5 NH male",
          "1.5 NH female x 1.5 NH male",
          "2.5 NH female swivel x 2.5 NH male",
          "1.5 NPSH female swivel x 1.5 NPSH male",
          "2.5 Storz x 2.5 Storz",
          "1.5 NPT female x 1.5 NPT male",
          "1.5 NH female swivel x 1.5 NPSH male");

  static final List<Double> LENGTHS_FT = List.of(25.0, 40.0, 50.0, 75.0, 100.0);

  private static final int MANY = 30;

  private final Random random;
  private final SmallShop shop = new SmallShop();

  public RandomShop(Random random) {
    this.random = random;
    times(1 + random.nextInt(2), i -> hoseSeries("H" + i));
    if (random.nextInt(3) == 0) {
      bulk(pick(List.of(1.5, 2.5)), pick(PAIRS).split(" x "), "B", random::nextBoolean);
    }
    fittings();
  }

  private RandomShop(Random random, double sizeIn, String[] ends) {
    this.random = random;
    double lengthFt = pick(List.of(75.0, 100.0));
    SmallShop.Part hose =
        shop.part("H0-0", ItemKind.HOSE, ends).hose(sizeIn, lengthFt, "H0").markedTo("NFPA 1961");
    rate(hose, 100);
    boolean fitted = lengthFt == 75;
    if (fitted) {
      hose.gasketsFitted();
    }
    priced(hose, (int) (lengthFt * 60), 3_000);
    // Sections go into one lay with those made up where both bring their gaskets, or neither does.
    bulk(sizeIn, ends, "H0", () -> fitted);
    fittings();
  }

  /**
   * A shop that sells one length of a make coupled, and the same make by the foot, so that the rest
   * of a run may be made up on the bench.
   */
  static RandomShop withBench(Random random) {
    String[] ends = PAIRS.get(random.nextInt(PAIRS.size())).split(" x ");
    return new RandomShop(random, random.nextBoolean() ? 1.5 : 2.5, ends);
  }

  /**
   * A shop whose adapters cost little from thirty on, each beside another that takes its place:
   * nobody needs so many in a line, but a buyer may ask for them beside it.
   */
  static RandomShop withDeepBreaks(Random random) {
    RandomShop drawn = new RandomShop(random);
    List<Item> adapters =
        drawn.shop.items().stream().filter(item -> item.number().startsWith("A")).toList();
    for (Item adapter : adapters) {
      String[] ends = adapter.ends().stream().map(End::toString).toArray(String[]::new);
      drawn.shop.price(adapter.number(), MANY, 200 + random.nextInt(300));
      drawn
          .shop
          .part(adapter.number().replace('A', 'E'), ItemKind.ADAPTER, ends)
          .at(500 + random.nextInt(1_000));
    }
    return drawn;
  }

  private void fittings() {
    times(4 + random.nextInt(3), i -> adapter("A" + i));
    times(random.nextInt(6), i -> gasket("G" + i));
    times(random.nextInt(3), i -> priced(shop.part("S" + i, ItemKind.SEALANT), 1, 900));
    times(2, i -> priced(shop.part("W" + i, ItemKind.WRENCH), 500, 2_000));
    fitting(shop.part("V0", ItemKind.VALVE, "1.5 NH female swivel", "1.5 NH male"));
    fitting(shop.part("V1", ItemKind.VALVE, "1.5 NPSH female swivel", "1.5 NPSH male"));
    String wide = pick(List.of("1.5 NH", "2.5 NH"));
    times(2, i -> wye("Y" + i, wide));
    // Never in a plan: it has no price.
    shop.part("U", ItemKind.ADAPTER, pick(ENDS), pick(ENDS)).unpriced();
    fitting(
        shop.part(
            "SI",
            ItemKind.SIAMESE,
            "1.5 NH female swivel",
            "1.5 NH female swivel",
            wide + " male"));
    fitting(shop.part("V2", ItemKind.VALVE, "2.5 NH female swivel", "2.5 NH male"));
  }

  private static void times(int count, IntConsumer action) {
    for (int i = 0; i < count; i++) {
      action.accept(i);
    }
  }

  public SmallShop shop() {
    return shop;
  }

  /** Jobs name a section of the first series as an accessory, and suction goods are refused. */
  private static HoseType first(HoseType drawn) {
    return drawn == HoseType.SUCTION ? HoseType.ATTACK : drawn;
  }

  private static HoseType further(HoseType drawn) {
    return drawn == HoseType.INDUSTRIAL ? HoseType.DISCHARGE : drawn;
  }

  private void hoseSeries(String name) {
    String[] ends = pick(PAIRS).split(" x ");
    double sizeIn = pick(List.of(1.5, 2.5));
    boolean fitted = random.nextBoolean();
    HoseType drawn = random.nextInt(4) > 0 ? HoseType.UNKNOWN : pick(TYPES);
    HoseType type = name.equals("H0") ? first(drawn) : further(drawn);
    times(
        1 + random.nextInt(3),
        i -> {
          double lengthFt = pick(LENGTHS_FT);
          SmallShop.Part part =
              shop.part(name + "-" + i, ItemKind.HOSE, ends).hose(sizeIn, lengthFt, name);
          rate(part, 100);
          if (fitted) {
            part.gasketsFitted();
          }
          part.weighs(lengthFt / 2);
          if (random.nextInt(12) == 0) {
            part.discontinued(random.nextInt(4));
          }
          if (random.nextInt(4) == 0) {
            part.serviceTest(120 + random.nextInt(200));
          }
          if (random.nextInt(3) > 0) {
            part.markedTo("NFPA 1961");
          }
          part.type(type);
          priced(part, (int) (lengthFt * 100), 8_000);
        });
  }

  /** Bulk hose, its couplings and the work; work has no quantity breaks here. */
  private void bulk(double sizeIn, String[] ends, String series, BooleanSupplier fitted) {
    SmallShop.Part hose = shop.part("B", ItemKind.BULK_HOSE).hose(sizeIn, 0, series);
    rate(hose, 100);
    priced(hose.markedTo("NFPA 1961"), 80, 150);
    times(
        2,
        i -> {
          SmallShop.Part coupling =
              shop.part("C" + i, ItemKind.COUPLING, ends[i]).hose(sizeIn, 0, "");
          if (fitted.getAsBoolean()) {
            coupling.gasketsFitted();
          }
          priced(coupling, 300, 1_500);
        });
    times(
        1 + random.nextInt(2),
        i -> priced(shop.part("X" + i, ItemKind.ATTACHMENT).hose(sizeIn, 0, ""), 50, 300));
    shop.part("L", ItemKind.COUPLING_LABOUR).at(100 + random.nextInt(400));
    shop.part("T", ItemKind.PRESSURE_TEST).at(100 + random.nextInt(400));
  }

  private void adapter(String number) {
    SmallShop.Part part = shop.part(number, ItemKind.ADAPTER, meeting(), pick(ENDS));
    if (random.nextInt(10) == 0) {
      part.discontinued(1 + random.nextInt(2));
    }
    fitting(part);
  }

  private void wye(String number, String inlet) {
    Stated gated = pick(List.of(Stated.YES, Stated.YES, Stated.UNKNOWN, Stated.UNKNOWN, Stated.NO));
    fitting(
        shop.part(number, ItemKind.WYE, inlet + " female swivel", "1.5 NH male", "1.5 NH male")
            .gated(gated));
  }

  private void fitting(SmallShop.Part part) {
    rate(part, 100);
    if (random.nextBoolean()) {
      part.gasketsFitted();
    }
    switch (random.nextInt(3)) {
      case 0 -> part.lossCoefficient(random.nextInt(20));
      case 1 -> part.loss(random.nextInt(12));
      default -> {}
    }
    if (random.nextInt(6) == 0) {
      part.waterway(pick(List.of(0.75, 1.25, 1.45, 1.5, 1.75, 2.0, 2.25)));
    }
    if (random.nextInt(12) == 0) {
      part.rated(30 + random.nextInt(150), 50);
    }
    priced(part, 500, 4_000);
  }

  private void gasket(String number) {
    SmallShop.Part part = shop.part(number, ItemKind.GASKET, pick(ENDS));
    if (random.nextInt(8) == 0) {
      part.discontinued(random.nextInt(6));
    }
    priced(part, 20, 300);
  }

  private void rate(SmallShop.Part part, int leastPsi) {
    if (random.nextInt(3) > 0) {
      part.working(leastPsi + random.nextInt(300));
    }
    if (random.nextInt(6) == 0) {
      part.derated(80, leastPsi + 100.0).derated(150, leastPsi);
    }
    if (random.nextInt(8) == 0) {
      part.vacuum();
    }
  }

  /** A price and up to two quantity breaks, some so deep that buying more costs less. */
  private void priced(SmallShop.Part part, int leastCents, int spread) {
    int cents = leastCents + random.nextInt(spread);
    if (random.nextInt(8) == 0 && !part.isDiscontinued()) {
      part.stocked(random.nextInt(5), random.nextInt(30));
    }
    part.at(cents);
    int quantity = 1;
    int breaks = random.nextInt(3);
    for (int i = 0; i < breaks; i++) {
      quantity += 1 + random.nextInt(5);
      cents = Math.max(1, cents * (40 + random.nextInt(58)) / 100);
      shop.price(part.number(), quantity, cents);
    }
  }

  /** A job that makes its parts matter. */
  public Job job() {
    return new RandomShopJobs(this, random).plain();
  }

  /** A job for which more of one adapter is wanted than any line takes. */
  Job countedJob() {
    return new RandomShopJobs(this, random).withMany();
  }

  /** A job with one or two valves between sections of its hose. */
  Job stationJob() {
    return new RandomShopJobs(this, random).withStations();
  }

  /** A job over ground that goes up and down. */
  Job routeJob() {
    return new RandomShopJobs(this, random).onRoute();
  }

  /** A job with two attack lines behind a wye. */
  Job wyeJob() {
    return new RandomShopJobs(this, random).withWye();
  }

  /** Two unlike lines behind a third. */
  public LayoutJob layoutJob() {
    return new RandomShopJobs(this, random).withLegs();
  }

  /** One or two unlike lines behind a pump of the buyer's. */
  public LayoutJob relayJob() {
    return new RandomShopJobs(this, random).withRelay();
  }

  /**
   * Two unlike lines from the source that meet before a third, with two siameses to choose from.
   */
  public LayoutJob joinJob() {
    fitting(
        shop.part(
            "SJ",
            ItemKind.SIAMESE,
            "2.5 NH female swivel",
            "2.5 NH female swivel",
            pick(List.of("1.5 NH male", "2.5 NH male"))));
    return new RandomShopJobs(this, random).withJoin();
  }

  /** A job with a line from each of two outlets, joined by a siamese. */
  Job outletsJob() {
    return new RandomShopJobs(this, random).withOutlets();
  }

  /** Mostly an end that meets something in the shop: else few jobs could be served. */
  String meeting() {
    if (random.nextInt(6) == 0) {
      return pick(ENDS);
    }
    List<Item> parts =
        shop.items().stream()
            .filter(item -> item.kind() == ItemKind.HOSE || item.kind() == ItemKind.ADAPTER)
            .toList();
    End half = pick(parts).ends().get(random.nextInt(2)).opposite();
    boolean swivels = half.gender() == Gender.FEMALE && half.carriesGasket();
    return half + (swivels && random.nextBoolean() ? " swivel" : "");
  }

  <T> T pick(List<T> from) {
    return from.get(random.nextInt(from.size()));
  }
}
