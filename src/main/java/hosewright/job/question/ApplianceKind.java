package hosewright.job.question;

/** What the line ends at. */
public enum ApplianceKind {
  NOZZLE,
  MONITOR,
  SPRINKLER,
  TANK,
  PIPE,
  APPLIANCE;

  /** Whether somebody holds it in the hands while water flows. */
  public boolean handHeld() {
    return this == NOZZLE;
  }

  /** Whether it can be turned onto the line, rather than the line onto it. */
  public boolean turnsFreely() {
    return this == NOZZLE || this == SPRINKLER;
  }
}
