package hosewright.door.shell.command;

/** What a person is doing when a command helps; {@code help} lists commands under these. */
public enum Group {
  IDENTIFY("Identify ends and joints"),
  PLAN("Plan a line"),
  QUOTE("Quote it"),
  BUY("Buy and stock"),
  BUDGET("Keep and budget hose"),
  DATA("Look after the data"),
  SHELL("Find your way");

  private final String title;

  Group(String title) {
    this.title = title;
  }

  /** The heading in {@code help}. */
  public String title() {
    return title;
  }
}
