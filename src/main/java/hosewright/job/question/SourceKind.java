package hosewright.job.question;

/** What the line starts at. */
public enum SourceKind {
  HYDRANT,
  PUMP,
  PIPE,
  TANK,
  OUTLET
}
