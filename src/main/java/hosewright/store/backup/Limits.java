package hosewright.store.backup;

/**
 * How much of anything a backup may hold, so that a file made to do harm is refused and not
 * unfolded until a disk is full. A million quotes keep within it; a backup that does not is not
 * called done.
 *
 * @param parts files in it
 */
record Limits(
    long fileBytes, long unfoldedBytes, int parts, long rows, int rowCharacters, int besideBytes) {
  static final Limits USUAL =
      new Limits(4L << 30, 64L << 30, 1_200, 200_000_000L, 8 << 20, 4 << 20);
}
