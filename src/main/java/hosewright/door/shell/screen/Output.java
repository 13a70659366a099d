package hosewright.door.shell.screen;

import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.Charset;

/** A place answers go, which knows how wide it is. */
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

  // A script that reads answers should not meet another line end on another machine.
  @Override
  public void println(String line) {
    write(line);
    write('\n');
    flush();
  }
}
