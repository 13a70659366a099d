package hosewright.catalogue;

import java.util.Locale;

/** What an item is, which decides where a plan may use it. */
public enum ItemKind {
  /** A coupled length of hose, bought as one piece. */
  HOSE,
  /** Hose by the foot, to be made up into sections. */
  BULK_HOSE,
  /** A coupling for making up a section: one end, and the hose it fits. */
  COUPLING,
  /** Expansion ring, ferrule, band or clamp that holds a coupling on its hose. */
  ATTACHMENT,
  /** Putting one coupling on a hose. */
  COUPLING_LABOUR,
  /** Pressure test of one made-up section, with its identity tag. */
  PRESSURE_TEST,
  /** Other work sold by the piece: flushing, disinfection, sampling. */
  SERVICE,
  /** A fitting with two ends: straight, reducer, double male, double female. */
  ADAPTER,
  WYE,
  SIAMESE,
  VALVE,
  CAP,
  PLUG,
  NOZZLE,
  MONITOR,
  GASKET,
  SEALANT,
  WRENCH,
  GAUGE,
  STRAINER,
  RAMP,
  RESTRAINT,
  METER,
  BACKFLOW,
  /** Takes in the water of a line and pushes it on; its first end is the intake. */
  PUMP;

  /** Work rather than goods: never bought ahead, never in stock. */
  public boolean isWork() {
    return this == COUPLING_LABOUR || this == PRESSURE_TEST || this == SERVICE;
  }

  /** Whether a buyer may ask for one by its kind, beside the line itself. */
  public boolean isAccessory() {
    return switch (this) {
      case WRENCH,
          VALVE,
          GAUGE,
          STRAINER,
          RAMP,
          RESTRAINT,
          CAP,
          PLUG,
          METER,
          BACKFLOW,
          NOZZLE,
          MONITOR ->
          true;
      default -> false;
    };
  }

  /** The word that stands in files: {@code bulk-hose}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
