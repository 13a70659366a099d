package hosewright.door.shell.screen;

import hosewright.problem.PlainText;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.util.Optional;

/** A place answers go, which knows how wide it is and lets nothing through but text. */
public final class Output extends PrintWriter {
  private final Screen screen;
  private final Optional<Pager> pager;

  Output(OutputStream stream, Charset charset, Screen screen, Optional<Pager> pager) {
    this(new OutputStreamWriter(stream, charset), screen, pager);
  }

  public Output(Writer writer, Screen screen) {
    this(writer, screen, Optional.empty());
  }

  /**
   * @param pager for answers that are longer than the screen
   */
  public Output(Writer writer, Screen screen, Optional<Pager> pager) {
    super(writer);
    this.screen = screen;
    this.pager = pager;
  }

  /** The same, with or without colour where that was asked for. */
  public Output coloured(Optional<Boolean> asked) {
    return asked.isEmpty() || asked.get() == screen.colour()
        ? this
        : new Output(out, new Screen(screen.width(), asked.get()), pager);
  }

  /** A whole answer, in colour where that is wanted, page by page where it is long. */
  public void answer(String text) {
    String plain = PlainText.spelt(text);
    String shown = screen.colour() ? Colours.in(plain) : plain;
    if (pager.isEmpty() || !pager.get().shows(shown)) {
      super.write(shown, 0, shown.length());
      super.write("\n", 0, 1);
    }
    flush();
  }

  public Screen screen() {
    return screen;
  }

  /** Whatever is kept: what would steer a terminal is spelt out. */
  @Override
  public void write(String text, int from, int length) {
    String plain = PlainText.spelt(text.substring(from, from + length));
    super.write(plain, 0, plain.length());
  }

  /** Goes back to the start of the line, to write over it. */
  public void startOver() {
    write('\r');
    flush();
  }

  // A script that reads answers should not meet another line end on another machine.
  @Override
  public void println(String line) {
    write(line);
    write('\n');
    flush();
  }
}
