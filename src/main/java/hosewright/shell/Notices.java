package hosewright.shell;

/** Says things on the side that are no part of an answer: on standard error, never on output. */
public final class Notices {
  private final Standard standard;

  Notices(Standard standard) {
    this.standard = standard;
  }

  public void say(String sentence) {
    standard.err().println(sentence);
  }
}
