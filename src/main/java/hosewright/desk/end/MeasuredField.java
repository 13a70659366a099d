package hosewright.desk.end;

import java.util.Locale;

/** What may be said of a male thread that was measured. */
public enum MeasuredField {
  OD,
  WRAP,
  TPI,
  PITCH,
  TAPER,
  STENCIL,
  ERROR,
  GENDER;

  /** The name a user knows it by. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
