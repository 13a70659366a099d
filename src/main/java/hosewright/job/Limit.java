package hosewright.job;

import hosewright.csv.ReferenceTable;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVRecord;

/**
 * A figure that a check or an assumption rests on, from {@code limits.csv}.
 *
 * @param note what it means, in words
 */
public record Limit(String name, double value, String unit, String source, String note) {
  private static final Map<String, Limit> ALL = load();

  public static final Limit VELOCITY_FT_PER_S = named("velocity");
  public static final Limit ATTACK_VELOCITY_FT_PER_S = named("velocity, attack hose");
  public static final Limit HYDRANT_RESIDUAL_PSI = named("hydrant residual");
  public static final Limit HAND_HELD_REACTION_LBF = named("hand-held reaction");
  public static final Limit SERVICE_TEST_SHARE = named("service test share");
  public static final Limit ADAPTERS = named("adapters in a bridge");
  public static final Limit SUCTION_ADAPTERS = named("adapters in a suction bridge");
  public static final Limit CROSS_CHECK_SHARE = named("cross-check difference");
  public static final Limit HAZEN_WILLIAMS_C = named("hazen-williams c");
  public static final Limit LINER_ROUGHNESS_IN = named("liner roughness");
  static final Limit WATER_TEMPERATURE_F = named("water temperature");
  public static final Limit HYDRANT_TEST_DROP = named("hydrant test drop");
  public static final Limit TIP_FLOW_SHARE = named("tip flow difference");
  public static final Limit NOZZLE_FLOW_SHARE = named("nozzle flow difference");
  public static final Limit EVEN_RUN_FT = named("even ground, run");
  public static final Limit EVEN_RISE_FT = named("even ground, rise");
  public static final Limit SUMMIT_PSI = named("summit pressure");
  public static final Limit SUCTION_LIFT_SHARE = named("suction lift share");
  public static final Limit RELAY_INTAKE_PSI = named("relay intake");
  public static final Limit BOOSTER_SPARE_PSI = named("booster spare");
  public static final Limit BOOSTER_COUPLINGS_FT = named("booster coupling spacing");
  public static final Limit MERCURY_IN_HG_PER_PSI = named("inches of mercury");
  public static final Limit SPARE_GASKETS_SHARE = named("spare gaskets");
  public static final Limit NEAR_SHARE = named("near a limit");
  public static final Limit NEAR_ZERO_PSI = named("near zero");
  public static final Limit DESIGN_RATIO_PSI = named("design ratio boundary");
  public static final Limit DESIGN_RATIO_LOW = named("design ratio, low pressure");
  public static final Limit DESIGN_RATIO_HIGH = named("design ratio, high pressure");

  /** The row with a name, for a check that alone rests on it. */
  static Limit named(String name) {
    return Objects.requireNonNull(ALL.get(name), name);
  }

  private static Map<String, Limit> load() {
    Map<String, Limit> limits = new LinkedHashMap<>();
    for (Limit limit : ReferenceTable.rows("line/limits.csv", Limit::of)) {
      limits.put(limit.name(), limit);
    }
    return limits;
  }

  private static Limit of(CSVRecord row) {
    return new Limit(
        row.get("name"),
        Double.parseDouble(row.get("value")),
        row.get("unit"),
        row.get("source"),
        row.get("note"));
  }
}
