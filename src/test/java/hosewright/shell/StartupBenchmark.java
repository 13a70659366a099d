package hosewright.shell;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.springframework.boot.Banner;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;

/**
 * How long a process takes from start to end, wall time: one {@code joint check} by the launcher
 * and by the plain jar, beside an empty program of Spring Shell and an empty one of Java. All take
 * turns, so that a machine that grows busier slows each alike.
 *
 * <p>After {@code mvn -B -DskipTests package}: {@code java -cp target/test-classes
 * hosewright.shell.StartupBenchmark [rounds]}.
 */
public final class StartupBenchmark {
  private static final Path BUILD = Path.of("target").toAbsolutePath();
  private static final String JAVA =
      Path.of(System.getProperty("java.home"), "bin", "java").toString();
  private static final List<String> CHECK =
      List.of("joint", "check", "--a", "2.5 NH male", "--b", "1.5 NPT female", "--json");

  private StartupBenchmark() {}

  /** Does nothing. */
  public static final class EmptyJava {
    private EmptyJava() {}

    public static void main(String[] args) {}
  }

  /** A shell with nothing of ours in it. */
  @EnableAutoConfiguration
  public static class EmptyShell {

    public static void main(String[] args) {
      SpringApplication application = new SpringApplication(EmptyShell.class);
      application.setBannerMode(Banner.Mode.OFF);
      application.run("--spring.shell.interactive.enabled=false", "version").close();
    }
  }

  /** Measures and prints medians, and each as a share of the plain jar's. */
  public static void main(String[] args) throws IOException, InterruptedException {
    int rounds = args.length > 0 ? Integer.parseInt(args[0]) : 15;
    Map<String, List<String>> programs = programs();
    Map<String, List<Double>> seconds = new LinkedHashMap<>();
    programs.forEach((name, command) -> seconds.put(name, new ArrayList<>()));
    for (int round = 0; round < rounds; round++) {
      for (Map.Entry<String, List<String>> program : programs.entrySet()) {
        seconds.get(program.getKey()).add(seconds(program.getValue()));
      }
    }
    double jar = median(seconds.get("plain jar"));
    System.out.println("Java " + System.getProperty("java.version") + ", median of " + rounds);
    seconds.forEach(
        (name, times) ->
            System.out.printf(
                Locale.ROOT,
                "%-20s %6.3f s  %4.0f %% of the plain jar%n",
                name,
                median(times),
                100 * median(times) / jar));
  }

  private static Map<String, List<String>> programs() {
    Map<String, List<String>> programs = new LinkedHashMap<>();
    programs.put("empty Java", List.of(JAVA, "-cp", classes(), EmptyJava.class.getName()));
    programs.put(
        "empty Spring Shell",
        List.of(
            JAVA,
            "-cp",
            classes() + File.pathSeparator + BUILD.resolve("hosewright/app/lib") + "/*",
            EmptyShell.class.getName()));
    programs.put("plain jar", with(JAVA, "-jar", BUILD.resolve("hosewright.jar").toString()));
    programs.put("launcher", with(BUILD.resolve("hosewright/bin/hosewright").toString()));
    return programs;
  }

  private static String classes() {
    return BUILD.resolve("test-classes").toString();
  }

  private static List<String> with(String... start) {
    List<String> command = new ArrayList<>(Arrays.asList(start));
    command.addAll(CHECK);
    return command;
  }

  private static double seconds(List<String> command) throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    builder.environment().put("HOSEWRIGHT_DATA", BUILD.resolve("startup-data").toString());
    Path out = Files.createTempFile("startup", ".out");
    builder.redirectErrorStream(true).redirectOutput(out.toFile());
    long began = System.nanoTime();
    int exitCode = builder.start().waitFor();
    double seconds = (System.nanoTime() - began) / 1e9;
    if (exitCode != 0) {
      throw new IllegalStateException(
          command + " ended with " + exitCode + ": " + Files.readString(out));
    }
    Files.delete(out);
    return seconds;
  }

  private static double median(List<Double> times) {
    List<Double> sorted = times.stream().sorted().toList();
    return sorted.get(sorted.size() / 2);
  }
}
