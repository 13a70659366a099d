package hosewright.line;

/** What the line is for, which decides the marks its parts must carry. */
public enum Use {
  FIRE,
  WATER,
  DRINKING
}
