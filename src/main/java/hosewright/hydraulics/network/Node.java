package hosewright.hydraulics.network;

import hosewright.hydraulics.Demand;
import hosewright.hydraulics.RelayPump;
import hosewright.hydraulics.Supply;
import hosewright.hydraulics.law.Given;
import java.util.Optional;

/**
 * A named place where links begin or end. How high it lies follows from the links that reach it.
 */
public sealed interface Node {

  /** What the user calls it; no two nodes of a network have one name. */
  String name();

  /**
   * Where water comes from. Links that begin here are its outlets and share its one supply.
   *
   * @param heightFt above the level that the heights of all sources are measured from, ft
   * @param supply what it gives; empty where only the pressure it needs is asked for
   */
  record Source(String name, double heightFt, Optional<Supply> supply) implements Node {
    public Source {
      Given.between("height of " + name, heightFt, -30_000, 30_000, "ft");
    }

    /** A source at the level heights are measured from. */
    public Source(String name, Supply supply) {
      this(name, 0, Optional.of(supply));
    }

    /** A source of which only the needed pressure is asked. */
    public static Source unknown(String name) {
      return new Source(name, 0, Optional.empty());
    }

    double closedPsi() {
      return supply.map(Supply::closedPsi).orElse(0.0);
    }
  }

  /** Where links divide, join, or go on as another; what a wye or siamese loses is in its links. */
  record Junction(String name) implements Node {}

  /**
   * A pump in the line: it takes in what the links that end here bring, and adds pressure to it. No
   * water runs back through it.
   *
   * @param boost pressure it adds at a flow, above its intake
   * @param leastIntakePsi intake pressure it must keep, psi
   */
  record Pump(String name, Supply boost, double leastIntakePsi) implements Node {
    public Pump {
      Given.between("least intake of " + name, leastIntakePsi, -14.7, 2_000, "psi");
    }

    /** A relay pump that keeps the intake pressure relays are run at. */
    public Pump(String name, Supply boost) {
      this(name, boost, RelayPump.LEAST_INTAKE_PSI);
    }
  }

  /** Where water leaves: an appliance, or an open end. Links that end here are its inlets. */
  record End(String name, Demand demand) implements Node {}
}
