package hosewright;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Writes down what processor time each test class took, of its own process and of programs that it
 * started and saw end: the clock says little on a machine that others use too.
 *
 * <p>Nothing asks for it but {@code mvn verify -Djunit.jupiter.extensions.autodetection.enabled};
 * the seconds stand in {@code target/processor-time.tsv}.
 */
public final class ProcessorTime implements BeforeAllCallback, AfterAllCallback {
  private static final OperatingSystemMXBean OURS =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
  private static final double NANOS = 1e9;

  /** Of Linux, which counts so for every program whatever the machine. */
  private static final double TICKS = 100;

  /** When each class began that has not ended: one may stand in another. */
  private final Deque<Seconds> begun = new ArrayDeque<>();

  private record Seconds(double own, double started) {}

  @Override
  public void beforeAll(ExtensionContext context) throws IOException {
    begun.push(now());
  }

  @Override
  public void afterAll(ExtensionContext context) throws IOException {
    Seconds from = begun.pop();
    Seconds to = now();
    Files.writeString(
        Path.of("target", "processor-time.tsv"),
        String.format(
            Locale.ROOT,
            "%.1f\t%.1f\t%s%n",
            to.own() - from.own(),
            to.started() - from.started(),
            context.getRequiredTestClass().getName()),
        StandardOpenOption.CREATE,
        StandardOpenOption.APPEND);
  }

  private static Seconds now() throws IOException {
    return new Seconds(OURS.getProcessCpuTime() / NANOS, startedSeconds());
  }

  /** Of programs that have ended; nothing where the system does not say. */
  private static double startedSeconds() throws IOException {
    Path ours = Path.of("/proc/self/stat");
    if (!Files.exists(ours)) {
      return 0;
    }
    String line = Files.readString(ours);
    // Behind the name, which may have spaces in it; the 16th and 17th of proc(5).
    String[] behind = line.substring(line.lastIndexOf(')') + 2).split(" ");
    return (Long.parseLong(behind[13]) + Long.parseLong(behind[14])) / TICKS;
  }
}
