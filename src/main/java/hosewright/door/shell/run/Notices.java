package hosewright.door.shell.run;

import hosewright.door.shell.screen.Output;
import hosewright.door.shell.screen.Standard;

/** Says things on the side that are no part of an answer: on standard error, never on output. */
public final class Notices {
  private final Standard standard;
  private int underway;

  Notices(Standard standard) {
    this.standard = standard;
  }

  public void say(String sentence) {
    over();
    standard.err().println(sentence);
  }

  /** Says how far long work is, over what it said before; only to a person. */
  public void progress(String sentence) {
    if (standard.terminal()) {
      String blanks = " ".repeat(Math.max(0, underway - sentence.length()));
      underway = sentence.length();
      print(sentence + blanks);
    }
  }

  /** Wipes the progress said last, so that what follows stands alone. */
  public void over() {
    if (underway > 0) {
      print(" ".repeat(underway));
      standard.err().startOver();
      underway = 0;
    }
  }

  private void print(String text) {
    Output err = standard.err();
    err.startOver();
    err.print(text);
    err.flush();
  }
}
