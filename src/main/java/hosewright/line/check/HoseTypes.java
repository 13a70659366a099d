package hosewright.line.check;

import hosewright.catalogue.HoseType;
import hosewright.csv.ReferenceTable;
import hosewright.job.Job;
import hosewright.job.question.SourceKind;
import hosewright.job.question.Use;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;

/**
 * Which types of hose a use takes, from {@code hose-types.csv}.
 *
 * @param takes the types, the one that is meant first
 */
record HoseTypes(List<HoseType> takes, String source) {
  private static final Map<String, HoseTypes> ALL = load();

  /** A leg that draws its water, whatever the use. */
  private static final String DRAWN = key("any", "suction");

  private static Map<String, HoseTypes> load() {
    Map<String, HoseTypes> all = new HashMap<>();
    for (Map.Entry<String, HoseTypes> row :
        ReferenceTable.rows("line/hose-types.csv", HoseTypes::of)) {
      all.put(row.getKey(), row.getValue());
    }
    return Map.copyOf(all);
  }

  private static Map.Entry<String, HoseTypes> of(CSVRecord row) {
    List<HoseType> takes =
        ReferenceTable.list(row, "takes", ";").stream()
            .map(word -> HoseType.valueOf(word.replace('-', '_').toUpperCase(Locale.ROOT)))
            .toList();
    return Map.entry(key(row.get("use"), row.get("leg")), new HoseTypes(takes, row.get("source")));
  }

  private static String key(String use, String leg) {
    return use + ", " + leg;
  }

  /**
   * Of a leg of a job.
   *
   * @param last whether the leg ends at the appliance
   */
  static HoseTypes of(Job job, boolean last) {
    if (job.source() == SourceKind.OPEN_WATER) {
      return ALL.get(DRAWN);
    }
    Use use = job.service().use();
    boolean handLine = last && job.appliance().handHeld();
    return ALL.get(key(use.word(), handLine ? "hand line" : "supply"));
  }
}
