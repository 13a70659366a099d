package hosewright.line;

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
record Limit(String name, double value, String unit, String source, String note) {
  private static final Map<String, Limit> ALL = load();

  static final Limit VELOCITY_FT_PER_S = named("velocity");
  static final Limit HYDRANT_RESIDUAL_PSI = named("hydrant residual");
  static final Limit HAND_HELD_REACTION_LBF = named("hand-held reaction");
  static final Limit SERVICE_TEST_SHARE = named("service test share");
  static final Limit ADAPTERS = named("adapters in a bridge");
  static final Limit CROSS_CHECK_SHARE = named("cross-check difference");
  static final Limit HAZEN_WILLIAMS_C = named("hazen-williams c");
  static final Limit LINER_ROUGHNESS_IN = named("liner roughness");
  static final Limit WATER_TEMPERATURE_F = named("water temperature");
  static final Limit HYDRANT_TEST_DROP = named("hydrant test drop");
  static final Limit TIP_FLOW_SHARE = named("tip flow difference");
  static final Limit SUCTION_LIFT_SHARE = named("suction lift share");
  static final Limit SPARE_GASKETS_SHARE = named("spare gaskets");
  static final Limit NEAR_SHARE = named("near a limit");
  static final Limit NEAR_ZERO_PSI = named("near zero");
  static final Limit DESIGN_RATIO_PSI = named("design ratio boundary");
  static final Limit DESIGN_RATIO_LOW = named("design ratio, low pressure");
  static final Limit DESIGN_RATIO_HIGH = named("design ratio, high pressure");

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
