package hosewright.catalogue;

import java.util.Locale;

/** What a hose is made for: the types that NFPA 1961 names, and three beside them. */
public enum HoseType {
  ATTACK,
  SUPPLY,
  FORESTRY,
  OCCUPANT_USE,
  BOOSTER,
  /** Holds its shape against the air's pressure, so that a pump can draw through it. */
  SUCTION,
  /** For work, no fire hose: wash-down, plant and garden. */
  INDUSTRIAL,
  /** Lies on the ground and carries water away, flat when empty; nobody holds a nozzle on it. */
  DISCHARGE,
  DRINKING_WATER,
  /** Its row does not say. */
  UNKNOWN;

  /** The word that stands in files: {@code occupant-use}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What is known of it, as a person says it; empty where there is nothing to say. */
  public String said() {
    return this == UNKNOWN ? "" : spoken();
  }

  /** As a person says it: {@code occupant-use hose}. */
  public String spoken() {
    return switch (this) {
      case DRINKING_WATER -> "drinking-water hose";
      case UNKNOWN -> "hose of unknown type";
      default -> word() + " hose";
    };
  }
}
