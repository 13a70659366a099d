package hosewright.catalogue.reading;

import hosewright.catalogue.Build;
import hosewright.catalogue.Form;
import hosewright.catalogue.HoseFacts;
import hosewright.catalogue.HoseType;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.PumpFacts;
import hosewright.catalogue.Rating;
import hosewright.catalogue.Selling;
import hosewright.catalogue.Sort;
import hosewright.catalogue.Stated;
import hosewright.catalogue.Stocking;
import hosewright.catalogue.Supplier;
import hosewright.catalogue.UnitOfSale;
import hosewright.catalogue.WaterFacts;
import hosewright.csv.CsvRow;
import hosewright.csv.Limits;
import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.thread.End;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One row of items.csv, turned into an item. */
public final class ItemCells {
  /** Columns that every file has. */
  public static final List<String> COLUMNS =
      List.of(
          "number",
          "kind",
          "description",
          "ends",
          "unit",
          "weight_lb",
          "material",
          "fluids",
          "working_psi",
          "service_test_psi",
          "derating",
          "vacuum_inhg",
          "hose_size_in",
          "length_ft",
          "series",
          "friction_coefficient",
          "bore_in",
          "bowl_in",
          "wave_speed_ft_s",
          "loss_k",
          "appliance_loss_psi",
          "opening_in",
          "k_factor",
          "drinking_water",
          "discontinued",
          "marked_to",
          "gaskets_fitted",
          "supplier",
          "pack",
          "lead_days",
          "on_hand");

  /** Columns that a file may leave out: what they would say is unknown then. */
  public static final List<String> LATER_COLUMNS =
      List.of(
          "sort",
          "gated",
          "shutoff",
          "channels",
          "hose_type",
          "waterway_in",
          "rated_flow_gpm",
          "rated_pressure_psi",
          "pump_curve",
          "fuel");

  /** Columns that say something only about hose and what goes on hose. */
  private static final List<String> HOSE_COLUMNS =
      List.of(
          "length_ft", "series", "friction_coefficient", "bowl_in", "wave_speed_ft_s", "hose_type");

  private static final Map<String, ItemKind> KINDS = inOrder(ItemKind.values(), ItemKind::word);
  private static final Map<String, HoseType> HOSE_TYPES =
      inOrder(
          Arrays.stream(HoseType.values())
              .filter(type -> type != HoseType.UNKNOWN)
              .toArray(HoseType[]::new),
          HoseType::word);
  private static final Map<String, UnitOfSale> UNITS =
      inOrder(UnitOfSale.values(), UnitOfSale::word);

  private static final Limits WEIGHT = Limits.between(0, 100_000, "lb");
  private static final Limits PRESSURE = Limits.between(1, 20_000, "psi");
  private static final String CURVE = "120 psi at 0 gpm; 90 psi at 300 gpm";
  private static final Map<String, String> FUELS =
      Stream.of("gasoline", "diesel", "electric")
          .collect(Collectors.toMap(word -> word, word -> word));
  private static final Limits LOSS = Limits.between(0, 1_000, "psi");
  private static final Limits TEMPERATURE = Limits.between(-100, 1_000, "°F");
  // A perfect vacuum at sea level is 29.92 inHg.
  private static final Limits VACUUM = Limits.between(0, 29.92, "inHg");
  private static final Limits SIZE = Limits.between(0.01, 60, "in");
  private static final Limits LENGTH = Limits.between(0.1, 5_000, "ft");
  private static final Limits COEFFICIENT = Limits.between(0.000001, 100_000, "");
  private static final Limits WAVE_SPEED = Limits.between(50, 6_000, "ft/s");
  private static final Limits COUNT = Limits.between(1, 1_000_000, "");
  private static final Limits FLOW = Limits.between(0.1, 100_000, "gpm");
  private static final Limits CHANNELS = Limits.between(1, 12, "");
  private static final Limits STOCK = Limits.between(0, 100_000_000, "");

  private final CsvRow row;
  private final Map<String, Supplier> suppliers;

  ItemCells(CsvRow row, Map<String, Supplier> suppliers) {
    this.row = row;
    this.suppliers = suppliers;
  }

  /** The item; of no use unless the row is still sound afterwards. */
  Item item() {
    Item item =
        new Item(
            row.text("number", 40),
            row.text("description", 200),
            form(),
            hose(),
            build(),
            water(),
            new Selling(row.choice("unit", UNITS), row.yes("discontinued"), stocking()));
    if (row.sound()) {
      new KindRules(row, item).hold();
    }
    return item;
  }

  private Form form() {
    ItemKind kind = row.choice("kind", KINDS);
    return new Form(
        kind,
        sort(kind),
        ends(),
        stated("gated"),
        stated("shutoff"),
        row.empty("channels")
            ? OptionalInt.empty()
            : OptionalInt.of(row.wholeNumber("channels", CHANNELS)),
        pump());
  }

  /** What a pump does; nothing is known where its curve is left out. */
  private Optional<PumpFacts> pump() {
    if (row.empty("pump_curve")) {
      return Optional.empty();
    }
    List<PumpFacts.Point> curve = new ArrayList<>();
    for (String part : row.parts("pump_curve", ";")) {
      row.parsed("pump_curve", part.strip(), ItemCells::point).ifPresent(curve::add);
    }
    for (int i = 1; i < curve.size(); i++) {
      if (curve.get(i).flowGpm() <= curve.get(i - 1).flowGpm()
          || curve.get(i).psi() > curve.get(i - 1).psi()) {
        row.refuse("pump_curve", "flow rising from point to point, and pressure never");
        return Optional.empty();
      }
    }
    if (curve.size() < 2 || curve.get(0).flowGpm() != 0) {
      row.refuse("pump_curve", "two points or more, the first at 0 gpm", CURVE);
      return Optional.empty();
    }
    return Optional.of(new PumpFacts(curve, row.empty("fuel") ? "" : row.choice("fuel", FUELS)));
  }

  /** A point as it stands in a file. */
  public static PumpFacts.Point point(String text) {
    String[] sides = text.split("\\bat\\b");
    if (sides.length != 2) {
      throw new BadInputException(
          "pump_curve", text, "points such as '120 psi at 0 gpm' with ; between them");
    }
    return new PumpFacts.Point(
        Measures.flowOrNoneGpm("pump_curve", sides[1].strip()),
        Measures.lossPsi("pump_curve", sides[0].strip()));
  }

  private Sort sort(ItemKind kind) {
    if (kind == null) {
      return Sort.UNKNOWN;
    }
    if (row.empty("sort")) {
      return Sort.unsaid(kind);
    }
    Map<String, Sort> sorts = inOrder(Sort.of(kind).toArray(Sort[]::new), Sort::word);
    if (sorts.isEmpty()) {
      row.refuse("sort", kind.word() + " has no sorts: leave it empty");
      return Sort.NONE;
    }
    return row.choice("sort", sorts);
  }

  private Stated stated(String column) {
    if (row.empty(column)) {
      return Stated.UNKNOWN;
    }
    return row.yes(column) ? Stated.YES : Stated.NO;
  }

  private Build build() {
    return new Build(
        row.optionalText("material", 80),
        row.number("weight_lb", WEIGHT),
        fluids(),
        rating(),
        row.yes("drinking_water"),
        row.optionalText("marked_to", 80),
        row.yes("gaskets_fitted"));
  }

  private WaterFacts water() {
    return new WaterFacts(
        row.optionalNumber("waterway_in", SIZE),
        row.optionalNumber("loss_k", COEFFICIENT),
        row.optionalNumber("appliance_loss_psi", LOSS),
        row.optionalNumber("opening_in", SIZE),
        row.optionalNumber("k_factor", COEFFICIENT),
        row.optionalNumber("rated_flow_gpm", FLOW),
        row.optionalNumber("rated_pressure_psi", PRESSURE));
  }

  private List<End> ends() {
    List<End> ends = new ArrayList<>();
    row.parts("ends", "\\s+x\\s+")
        .forEach(part -> row.parsed("ends", part, End::parse).ifPresent(ends::add));
    return ends;
  }

  private Set<String> fluids() {
    Set<String> fluids = new LinkedHashSet<>(row.parts("fluids", ";"));
    if (fluids.stream().anyMatch(fluid -> fluid.isEmpty() || fluid.length() > 40)) {
      row.refuse("fluids", "fluids of 1 to 40 characters with ; between them");
    }
    return fluids;
  }

  private Rating rating() {
    return new Rating(
        row.optionalNumber("working_psi", PRESSURE),
        row.optionalNumber("service_test_psi", PRESSURE),
        derating(),
        row.optionalNumber("vacuum_inhg", VACUUM));
  }

  private List<Rating.Derating> derating() {
    List<Rating.Derating> steps = new ArrayList<>();
    for (String part : row.parts("derating", ";")) {
      row.parsed("derating", part, ItemCells::step).ifPresent(steps::add);
    }
    for (int i = 1; i < steps.size(); i++) {
      if (steps.get(i).temperatureF() <= steps.get(i - 1).temperatureF()
          || steps.get(i).workingPsi() > steps.get(i - 1).workingPsi()) {
        row.refuse("derating", "coolest first, and no more pressure where it is hotter");
        return List.of();
      }
    }
    return steps;
  }

  private static Rating.Derating step(String part) {
    String[] pair = part.split(":", -1);
    Optional<BigDecimal> temperatureF = TEMPERATURE.read(pair[0].strip());
    Optional<BigDecimal> workingPsi = PRESSURE.read(pair[pair.length - 1].strip());
    if (pair.length != 2 || temperatureF.isEmpty() || workingPsi.isEmpty()) {
      throw new BadInputException(
          "derating",
          part,
          "steps of temperature in °F : working pressure in psi with ; between them, such as"
              + " 73:300;120:250");
    }
    return new Rating.Derating(temperatureF.get().doubleValue(), workingPsi.get().doubleValue());
  }

  private Optional<HoseFacts> hose() {
    if (row.empty("hose_size_in")) {
      HOSE_COLUMNS.stream()
          .filter(column -> !row.empty(column))
          .findFirst()
          .ifPresent(
              column ->
                  row.refuse(
                      "hose_size_in", "the hose size in inches, since " + column + " is given"));
      return Optional.empty();
    }
    return Optional.of(
        new HoseFacts(
            row.empty("hose_type") ? HoseType.UNKNOWN : row.choice("hose_type", HOSE_TYPES),
            row.optionalText("series", 80),
            new HoseFacts.Diameters(
                row.number("hose_size_in", SIZE),
                row.optionalNumber("bore_in", SIZE),
                row.optionalNumber("bowl_in", SIZE)),
            row.optionalNumber("length_ft", LENGTH),
            row.optionalNumber("friction_coefficient", COEFFICIENT),
            row.optionalNumber("wave_speed_ft_s", WAVE_SPEED)));
  }

  /** Work done by the dealer itself has no supplier; an empty lead time is the supplier's. */
  private Stocking stocking() {
    String code =
        row.empty("supplier") ? "" : row.known("supplier", suppliers.keySet(), "suppliers.csv");
    Supplier supplier = suppliers.get(code);
    return new Stocking(
        code,
        row.wholeNumber("pack", COUNT, 1),
        row.wholeNumber(
            "lead_days", CatalogueReader.LEAD_DAYS, supplier == null ? 0 : supplier.leadDays()),
        row.wholeNumber("on_hand", STOCK, 0));
  }

  private static <E> Map<String, E> inOrder(E[] values, Function<E, String> word) {
    return Arrays.stream(values)
        .collect(Collectors.toMap(word, value -> value, (a, b) -> a, LinkedHashMap::new));
  }
}
