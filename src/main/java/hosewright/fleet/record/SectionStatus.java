package hosewright.fleet.record;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Where a section stands. */
public enum SectionStatus {
  IN_SERVICE,
  /** Fit for service, kept in store. */
  RESERVE,
  /** Taken out of service by a rule; a repair and a passed test may bring it back. */
  REMOVED,
  /** Gone for good. */
  RETIRED;

  /** The word that stands in files: {@code in-service}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether the agency may put it on a line today. */
  public boolean usable() {
    return this == IN_SERVICE || this == RESERVE;
  }

  static Map<String, SectionStatus> byWord() {
    Map<String, SectionStatus> words = new LinkedHashMap<>();
    Arrays.stream(values()).forEach(status -> words.put(status.word(), status));
    return words;
  }
}
