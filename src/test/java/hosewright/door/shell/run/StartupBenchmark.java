package hosewright.door.shell.run;

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
import java.util.stream.Stream;
import org.springframework.boot.Banner;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/**
 * How long a process takes from start to end, wall time: one {@code joint check} by the launcher
 * and by the plain jar, beside an empty program of Spring Shell and an empty one of Java. All take
 * turns, so that a machine that grows busier slows each alike.
 *
 * <p>After {@code mvn -B -DskipTests package}: {@code java -cp target/test-classes
 * hosewright.door.shell.run.StartupBenchmark [rounds [folder of a JDK ...]]}; without folders on
 * the Java that runs it.
 */
public final class StartupBenchmark {
  private static final Path BUILD = Path.of("target").toAbsolutePath();
  private static final int CACHE_SECONDS = 180;
  private static final List<String> CHECK =
      List.of("joint", "check", "--a", "2.5 NH male", "--b", "1.5 NPT female", "--json");

  private StartupBenchmark() {}

  /** Does nothing. */
  public static final class EmptyJava {
    private EmptyJava() {}

    public static void main(String[] args) {}
  }

  /** A shell with nothing of ours in it. */
  @SpringBootApplication(scanBasePackages = "hosewright.nothing")
  public static class EmptyShell {

    public static void main(String[] args) {
      SpringApplication application = new SpringApplication(EmptyShell.class);
      application.setBannerMode(Banner.Mode.OFF);
      application.setDefaultProperties(Map.of("spring.shell.interactive.enabled", "false"));
      application.run("version").close();
    }
  }

  /** Measures and prints medians, and each as a share of the plain jar's on the same Java. */
  public static void main(String[] args) throws IOException, InterruptedException {
    int rounds = args.length > 0 ? Integer.parseInt(args[0]) : 15;
    List<Path> homes =
        args.length > 1
            ? Arrays.stream(args).skip(1).map(Path::of).toList()
            : List.of(Path.of(System.getProperty("java.home")));
    Map<Path, Map<String, List<Double>>> seconds = new LinkedHashMap<>();
    for (Path home : homes) {
      Map<String, List<Double>> times = new LinkedHashMap<>();
      for (Map.Entry<String, List<String>> program : programs(home).entrySet()) {
        seconds(home, program.getValue());
        times.put(program.getKey(), new ArrayList<>());
      }
      seconds.put(home, times);
      waitForCache();
    }
    for (int round = 0; round < rounds; round++) {
      for (Path home : homes) {
        for (Map.Entry<String, List<String>> program : programs(home).entrySet()) {
          seconds.get(home).get(program.getKey()).add(seconds(home, program.getValue()));
        }
      }
    }
    seconds.forEach((home, times) -> print(home, rounds, times));
  }

  private static void print(Path home, int rounds, Map<String, List<Double>> seconds) {
    double jar = median(seconds.get("plain jar"));
    System.out.println(home + ", median of " + rounds);
    seconds.forEach(
        (name, times) ->
            System.out.printf(
                Locale.ROOT,
                "%-20s %6.3f s  %4.0f %% of the plain jar%n",
                name,
                median(times),
                100 * median(times) / jar));
  }

  /** The launcher's first start on a newer Java makes its cache on the side. */
  private static void waitForCache() throws IOException, InterruptedException {
    for (int second = 0; second < CACHE_SECONDS; second++) {
      try (Stream<Path> files = Files.list(BUILD.resolve("hosewright/app"))) {
        List<String> names = files.map(file -> file.getFileName().toString()).toList();
        boolean underway =
            names.stream()
                .filter(name -> name.endsWith(".aot.made"))
                .anyMatch(name -> !names.contains(name.replace(".made", "")));
        if (!underway) {
          return;
        }
      }
      Thread.sleep(1000);
    }
    System.out.println("No cache was made within " + CACHE_SECONDS + " s.");
  }

  private static Map<String, List<String>> programs(Path home) {
    String java = home.resolve("bin/java").toString();
    Map<String, List<String>> programs = new LinkedHashMap<>();
    programs.put("empty Java", List.of(java, "-cp", classes(), EmptyJava.class.getName()));
    programs.put(
        "empty Spring Shell",
        List.of(
            java,
            "-cp",
            classes() + File.pathSeparator + BUILD.resolve("hosewright/app/lib") + "/*",
            EmptyShell.class.getName()));
    programs.put("plain jar", with(java, "-jar", BUILD.resolve("hosewright.jar").toString()));
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

  private static double seconds(Path home, List<String> command)
      throws IOException, InterruptedException {
    // The empty shell keeps its history in the folder it is started in.
    ProcessBuilder builder = new ProcessBuilder(command).directory(BUILD.toFile());
    builder.environment().put("JAVA_HOME", home.toString());
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
