package hosewright.catalogue;

import java.util.Locale;

/** What a row says of something that is so or is not: an empty cell is neither. */
public enum Stated {
  YES,
  NO,
  UNKNOWN;

  /** The word that stands in files; empty where nothing is known. */
  public String word() {
    return this == UNKNOWN ? "" : name().toLowerCase(Locale.ROOT);
  }
}
