package hosewright.catalogue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a fitting or attachment is, by the word the trade has for it; finer than its kind. */
public enum Sort {
  /** Changes the thread and keeps the size. */
  ADAPTER(ItemKind.ADAPTER),
  /** Narrower at its male end. */
  REDUCER(ItemKind.ADAPTER),
  /** Wider at its male end. */
  INCREASER(ItemKind.ADAPTER),
  DOUBLE_MALE(ItemKind.ADAPTER),
  DOUBLE_FEMALE(ItemKind.ADAPTER),
  ELBOW(ItemKind.ADAPTER),
  /** Divides one line into two or more of one size. */
  WYE(ItemKind.WYE),
  /** Gives a line of its own size and smaller ones beside it. */
  WATER_THIEF(ItemKind.WYE),
  /** A wide inlet, several outlets, each with its valve; a distribution manifold. */
  MANIFOLD(ItemKind.WYE),
  /** Joins lines, and nothing in it shuts the one that has no water. */
  SIAMESE(ItemKind.SIAMESE),
  /** Joins lines; a clapper shuts the inlet that has no water. */
  CLAPPERED_SIAMESE(ItemKind.SIAMESE),
  BALL_VALVE(ItemKind.VALVE),
  GATE_VALVE(ItemKind.VALVE),
  BUTTERFLY_VALVE(ItemKind.VALVE),
  CHECK_VALVE(ItemKind.VALVE),
  /** Opens at a set pressure; one for an intake has a gate too. */
  RELIEF_VALVE(ItemKind.VALVE),
  PRESSURE_REGULATOR(ItemKind.VALVE),
  /** Shuts the water at the nozzle, before a tip that has no shutoff. */
  NOZZLE_SHUTOFF(ItemKind.VALVE),
  /** Draws another liquid in by the water's flow; it takes a third or more of the pressure. */
  EDUCTOR(ItemKind.VALVE),
  CAP(ItemKind.CAP),
  PLUG(ItemKind.PLUG),
  FOG_NOZZLE(ItemKind.NOZZLE),
  /** For hose racks and cabinets that whoever is in the building takes. */
  RACK_NOZZLE(ItemKind.NOZZLE),
  /** A straight bore, ready for the hand. */
  SMOOTH_BORE_NOZZLE(ItemKind.NOZZLE),
  /** A straight bore alone, to stand on a shutoff or a monitor. */
  TIP(ItemKind.NOZZLE),
  WASH_DOWN_NOZZLE(ItemKind.NOZZLE),
  /** An open end over a tank. */
  FILL_STAND(ItemKind.NOZZLE),
  MONITOR(ItemKind.MONITOR),
  GASKET(ItemKind.GASKET),
  SEALANT(ItemKind.SEALANT),
  /** One spanner for lugs. */
  SPANNER(ItemKind.WRENCH),
  /** Two spanners for lugs, with their holder. */
  SPANNER_SET(ItemKind.WRENCH),
  HYDRANT_WRENCH(ItemKind.WRENCH),
  PIPE_WRENCH(ItemKind.WRENCH),
  /** Stands between two couplings. */
  LINE_GAUGE(ItemKind.GAUGE),
  /** Closes an outlet and shows its pressure. */
  CAP_GAUGE(ItemKind.GAUGE),
  /** Stands at the water's end of a suction line. */
  STRAINER(ItemKind.STRAINER),
  /** A suction strainer that holds the water in the line. */
  FOOT_VALVE(ItemKind.STRAINER),
  /** Stands in a line under pressure. */
  LINE_STRAINER(ItemKind.STRAINER),
  RAMP(ItemKind.RAMP),
  /** From hose to hose, across a joint. */
  WHIP_RESTRAINT(ItemKind.RESTRAINT),
  /** From hose to what is fixed, at an end. */
  END_RESTRAINT(ItemKind.RESTRAINT),
  METER(ItemKind.METER),
  /** Not for constant pressure: nothing behind it may be shut for long. */
  VACUUM_BREAKER(ItemKind.BACKFLOW),
  DOUBLE_CHECK(ItemKind.BACKFLOW),
  REDUCED_PRESSURE(ItemKind.BACKFLOW),
  /** A fitting whose row does not say which. */
  UNKNOWN,
  /** Hose, what goes on hose, and work: the kind says all. */
  NONE;

  private static final Map<ItemKind, List<Sort>> OF_KIND =
      Arrays.stream(values())
          .filter(sort -> sort.kind.isPresent())
          .collect(Collectors.groupingBy(sort -> sort.kind.get()));

  private final Optional<ItemKind> kind;

  Sort() {
    this.kind = Optional.empty();
  }

  Sort(ItemKind kind) {
    this.kind = Optional.of(kind);
  }

  /** The kind of which it is a sort; empty for those two that say that none is known. */
  public Optional<ItemKind> kind() {
    return kind;
  }

  /** The sorts there are of a kind, in the trade's order; none for hose and work. */
  public static List<Sort> of(ItemKind kind) {
    return OF_KIND.getOrDefault(kind, List.of());
  }

  /** What a row means that does not say: the kind's only sort, else unknown. */
  public static Sort unsaid(ItemKind kind) {
    List<Sort> sorts = of(kind);
    return sorts.isEmpty() ? NONE : sorts.size() == 1 ? sorts.get(0) : UNKNOWN;
  }

  /** The word that stands in files: {@code gate-valve}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What is known of it, as a person says it; empty where there is nothing to say. */
  public String said() {
    return this == UNKNOWN || this == NONE ? "" : spoken();
  }

  /** As a person says it: {@code gate valve}. */
  public String spoken() {
    return word().replace('-', ' ');
  }
}
