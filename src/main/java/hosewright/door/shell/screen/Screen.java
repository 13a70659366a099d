package hosewright.door.shell.screen;

/**
 * What the answer is shown on.
 *
 * @param width columns; very large when the answer goes to a file or another program
 * @param colour whether colour may be used, never as the only carrier of meaning
 */
public record Screen(int width, boolean colour) {

  /** A file or another program: nothing is wrapped, nothing coloured. */
  public static final Screen PIPED = new Screen(10_000, false);

  /** The widest that prose should run, columns. */
  public int proseWidth() {
    return Math.min(width, 100);
  }
}
