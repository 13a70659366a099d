package hosewright.store.backup;

/** A column of a table, as the first line of its part names it. */
record Column(String name, CellType type) {

  /** {@code ITEM_NUMBER text}. */
  String written() {
    return name + " " + type.word();
  }

  /**
   * The column again.
   *
   * @throws IllegalArgumentException when it is none
   */
  static Column read(String cell) {
    if (!cell.matches("[A-Z][A-Z0-9_]{0,59} [a-z]{1,10}")) {
      throw new IllegalArgumentException(cell);
    }
    int space = cell.indexOf(' ');
    return new Column(
        cell.substring(0, space),
        CellType.named(cell.substring(space + 1))
            .orElseThrow(() -> new IllegalArgumentException(cell)));
  }
}
