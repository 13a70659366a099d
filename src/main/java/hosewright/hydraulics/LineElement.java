package hosewright.hydraulics;

/** One part of a line as the water meets it, from source to appliance. */
public sealed interface LineElement
    permits HoseLeg, ParallelLegs, Fitting, ApplianceLoss, TaughtLoss, PortLoss, RelayPump {

  /** What a loss is counted under. */
  enum Kind {
    FRICTION,
    FITTING,
    APPLIANCE,
    PUMP
  }

  /** What the user calls it. */
  String name();

  /** What its loss is counted under. */
  Kind kind();

  /** The same at a flow of the whole line, gpm, where it depends on that. */
  default Kind kind(double flowGpm) {
    return kind();
  }

  /**
   * Pressure lost in it, psi, without the rise; negative in a pump.
   *
   * @param flowGpm flow of the whole line, gpm, 0 or more
   */
  double lossPsi(double flowGpm);

  /** Pressure it adds when nothing flows, psi; 0 for all but a pump. */
  default double closedBoostPsi() {
    return 0;
  }

  /** Length laid, ft. */
  default double lengthFt() {
    return 0;
  }

  /** Height gained from its start to its end, ft; negative downhill. */
  default double riseFt() {
    return 0;
  }

  /** How high the ground lies under it; even where nothing else is known. */
  default Ground ground() {
    return Ground.even(lengthFt(), riseFt());
  }

  /** Sections in it: a station stands at the end of each. */
  default int sections() {
    return 1;
  }
}
