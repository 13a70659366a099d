package hosewright.catalogue;

import hosewright.csv.PlainNumber;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/** An item's facts under the names of their columns, as a catalogue file would write them. */
public final class ItemFacts {
  private static final Map<String, Function<Item, String>> COLUMNS = columns();

  private ItemFacts() {}

  /** Every fact that is there, in the order of the columns. */
  public static Map<String, String> of(Item item) {
    Map<String, String> facts = new LinkedHashMap<>();
    COLUMNS.forEach(
        (column, fact) -> {
          String written = fact.apply(item);
          if (!written.isEmpty()) {
            facts.put(column, written);
          }
        });
    return facts;
  }

  /**
   * What differs between two states of an item, but for its being discontinued, and its stock,
   * which moves without the catalogue.
   */
  static List<CatalogueDifference.FactChange> changes(Item before, Item after) {
    List<CatalogueDifference.FactChange> changes = new ArrayList<>();
    if (before.equals(after)) {
      return changes;
    }
    COLUMNS.forEach(
        (column, fact) -> {
          String old = fact.apply(before);
          String now = fact.apply(after);
          boolean saidElsewhere =
              column.equals("on_hand") || (column.equals("discontinued") && now.equals("yes"));
          if (!old.equals(now) && !saidElsewhere) {
            changes.add(new CatalogueDifference.FactChange(after.number(), column, old, now));
          }
        });
    return changes;
  }

  private static Map<String, Function<Item, String>> columns() {
    Map<String, Function<Item, String>> columns = new LinkedHashMap<>();
    columns.put("kind", item -> item.kind().word());
    columns.put("sort", item -> sort(item.sort()));
    columns.put("description", Item::description);
    columns.put(
        "ends", item -> item.ends().stream().map(End::toString).collect(Collectors.joining(" x ")));
    columns.put("unit", item -> item.unit().word());
    columns.put("weight_lb", item -> PlainNumber.of(item.weightLb()));
    columns.put("material", Item::material);
    columns.put("fluids", item -> item.fluids().stream().sorted().collect(Collectors.joining(";")));
    columns.put("working_psi", item -> plain(item.rating().workingPsi()));
    columns.put("service_test_psi", item -> plain(item.rating().serviceTestPsi()));
    columns.put("derating", item -> derating(item.rating()));
    columns.put("vacuum_inhg", item -> plain(item.rating().vacuumInHg()));
    columns.put("gated", item -> item.form().gated().word());
    columns.put("shutoff", item -> item.form().shutoff().word());
    columns.put("channels", item -> channels(item.form()));
    columns.put("hose_type", hose(ItemFacts::type));
    columns.put("hose_size_in", hose(facts -> PlainNumber.of(facts.sizeIn())));
    columns.put("length_ft", hose(facts -> plain(facts.lengthFt())));
    columns.put("series", hose(HoseFacts::series));
    columns.put("friction_coefficient", hose(facts -> plain(facts.frictionCoefficient())));
    columns.put("bore_in", hose(facts -> plain(facts.boreIn())));
    columns.put("bowl_in", hose(facts -> plain(facts.bowlIn())));
    columns.put("wave_speed_ft_s", hose(facts -> plain(facts.waveSpeedFtPerS())));
    columns.put("waterway_in", item -> plain(item.water().waterwayIn()));
    columns.put("loss_k", item -> plain(item.lossCoefficient()));
    columns.put("appliance_loss_psi", item -> plain(item.applianceLossPsi()));
    columns.put("opening_in", item -> plain(item.opening()));
    columns.put("k_factor", item -> plain(item.kFactor()));
    columns.put("rated_flow_gpm", item -> plain(item.water().ratedFlowGpm()));
    columns.put("rated_pressure_psi", item -> plain(item.water().ratedPressurePsi()));
    columns.put("pump_curve", item -> item.form().pump().map(ItemFacts::curve).orElse(""));
    columns.put("fuel", item -> item.form().pump().map(PumpFacts::fuel).orElse(""));
    columns.put("drinking_water", item -> yes(item.drinkingWater()));
    columns.put("discontinued", item -> yes(item.discontinued()));
    columns.put("marked_to", Item::markedTo);
    columns.put("gaskets_fitted", item -> yes(item.comesWithGaskets()));
    columns.put("supplier", item -> item.stocking().supplier());
    columns.put("pack", item -> String.valueOf(item.stocking().packSize()));
    columns.put("lead_days", item -> String.valueOf(item.stocking().leadDays()));
    columns.put("on_hand", item -> String.valueOf(item.stocking().onHand()));
    return columns;
  }

  private static Function<Item, String> hose(Function<HoseFacts, String> fact) {
    return item -> Optional.of(item).flatMap(Item::hose).map(fact).orElse("");
  }

  /** What is unknown is left out, as in a file. */
  private static String sort(Sort sort) {
    return sort.said().isEmpty() ? "" : sort.word();
  }

  private static String type(HoseFacts hose) {
    return hose.type() == HoseType.UNKNOWN ? "" : hose.type().word();
  }

  private static String channels(Form form) {
    return form.channels().isPresent() ? String.valueOf(form.channels().getAsInt()) : "";
  }

  private static String derating(Rating rating) {
    return rating.derating().stream()
        .map(step -> PlainNumber.of(step.temperatureF()) + ":" + PlainNumber.of(step.workingPsi()))
        .collect(Collectors.joining(";"));
  }

  /** As it stands in a file. */
  public static String curve(PumpFacts pump) {
    return pump.curve().stream()
        .map(
            point ->
                PlainNumber.of(point.psi()) + " psi at " + PlainNumber.of(point.flowGpm()) + " gpm")
        .collect(Collectors.joining("; "));
  }

  private static String yes(boolean fact) {
    return fact ? "yes" : "no";
  }

  private static String plain(OptionalDouble number) {
    return number.isPresent() ? PlainNumber.of(number.getAsDouble()) : "";
  }
}
