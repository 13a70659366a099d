package hosewright.line.goods;

import java.util.Locale;

/** Where something asked for besides the line has its place, which decides how many are needed. */
public enum Place {
  /** In the line, before its hose. */
  SOURCE,
  /** At the end of each line. */
  APPLIANCE,
  /** Where lines divide or join: it is one of the line's own parts. */
  SPLIT,
  /** With the hose, for the couplings of each size. */
  COUPLINGS,
  /** Across every joint between sections. */
  JOINTS,
  /** Where hose is made fast to anything but hose. */
  ENDS,
  HYDRANT,
  /** Where wheels cross the hose. */
  CROSSING,
  BESIDE;

  static Place of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }
}
