package hosewright.door.shell.screen;

import hosewright.problem.PlainText;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.Charset;

/** A place answers go, which knows how wide it is and lets nothing through but text. */
public final class Output extends PrintWriter {
  private final Screen screen;

  Output(OutputStream stream, Charset charset, Screen screen) {
    this(new OutputStreamWriter(stream, charset), screen);
  }

  public Output(Writer writer, Screen screen) {
    super(writer);
    this.screen = screen;
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
