package hosewright.job.question;

/** What the line starts at. */
public enum SourceKind {
  HYDRANT,
  PUMP,
  PIPE,
  TANK,
  OUTLET,
  /** A pond, a river, a tank below: nothing pushes its water. */
  OPEN_WATER
}
