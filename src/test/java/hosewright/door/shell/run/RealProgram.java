package hosewright.door.shell.run;

import hosewright.door.shell.command.ProbeCommands;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Starts the program that the build made, as a process of its own, in a folder of its own. */
public final class RealProgram {
  private static final Path BUILD = Path.of("target").toAbsolutePath();
  static final Path HOME = BUILD.resolve("hosewright");
  private static final String JAVA =
      Path.of(System.getProperty("java.home"), "bin", "java").toString();

  private final List<String> start;
  private final Path folder;
  private final Map<String, String> more;

  private RealProgram(List<String> start, Path folder) {
    this(start, folder, Map.of());
  }

  private RealProgram(List<String> start, Path folder, Map<String, String> more) {
    this.start = start;
    this.folder = folder;
    this.more = more;
  }

  /** This program with more in its environment. */
  public RealProgram with(Map<String, String> environment) {
    return new RealProgram(start, folder, environment);
  }

  /** The jar that runs alone. */
  public static RealProgram jar(Path folder) {
    return new RealProgram(
        List.of(JAVA, "-jar", BUILD.resolve("hosewright.jar").toString()), folder);
  }

  /** The extracted jar with its class-data archive, started as the launcher does. */
  public static RealProgram installed(Path folder) {
    return new RealProgram(
        Stream.concat(
                fromArchive(), Stream.of("-jar", HOME.resolve("app/hosewright.jar").toString()))
            .toList(),
        folder);
  }

  private static Stream<String> fromArchive() {
    return Stream.of(
        JAVA,
        "-Xshare:auto",
        "-XX:SharedArchiveFile=" + HOME.resolve("app/hosewright.jsa"),
        "-Xlog:disable",
        "-XX:TieredStopAtLevel=1");
  }

  /** A launcher. */
  public static RealProgram launcher(Path launcher, Path folder) {
    return new RealProgram(List.of(launcher.toString()), folder);
  }

  /** The built jar with the commands of {@link ProbeCommands} added. */
  public static RealProgram withProbes(Path folder) {
    // The jar first and alone, which names its libraries itself: the archive was made of that path.
    String path =
        HOME.resolve("app/hosewright.jar") + File.pathSeparator + BUILD.resolve("test-classes");
    return new RealProgram(
        Stream.concat(fromArchive(), Stream.of("-cp", path, ProbeCommands.class.getName()))
            .toList(),
        folder);
  }

  /** What came of one run. */
  public record Ended(int exitCode, String out, String err) {}

  public Ended run(String... words) {
    return runWith("", words);
  }

  /** Runs with this text on standard input. */
  public Ended runWith(String input, String... words) {
    try {
      Path streams = Files.createTempDirectory("hosewright-run");
      Path in = Files.writeString(streams.resolve("in"), input);
      Path out = streams.resolve("out");
      Path err = streams.resolve("err");
      ProcessBuilder builder =
          new ProcessBuilder(Stream.concat(start.stream(), Stream.of(words)).toList())
              .directory(folder.toFile())
              .redirectInput(in.toFile())
              .redirectOutput(out.toFile())
              .redirectError(err.toFile());
      setUp(builder.environment());
      int exitCode = builder.start().waitFor();
      Ended ended = new Ended(exitCode, Files.readString(out), Files.readString(err));
      for (Path file : List.of(in, out, err, streams)) {
        Files.delete(file);
      }
      return ended;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** Starts a run for a test that ends it itself; what it says is thrown away. */
  public Process begin(String... words) {
    try {
      ProcessBuilder builder =
          new ProcessBuilder(Stream.concat(start.stream(), Stream.of(words)).toList())
              .directory(folder.toFile())
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .redirectError(ProcessBuilder.Redirect.DISCARD);
      setUp(builder.environment());
      return builder.start();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Starts and does not wait; both streams go into one file. */
  public Process start(Path said, String... words) throws IOException {
    ProcessBuilder builder =
        new ProcessBuilder(Stream.concat(start.stream(), Stream.of(words)).toList())
            .directory(folder.toFile())
            .redirectInput(Path.of("/dev/null").toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile());
    setUp(builder.environment());
    return builder.start();
  }

  /** This program where no file may grow beyond so many blocks of 512 bytes. */
  public RealProgram withFilesUpTo(long blocks) {
    List<String> limited = new ArrayList<>();
    limited.addAll(List.of("sh", "-c", "ulimit -f " + blocks + "; exec \"$@\"", "limited"));
    limited.addAll(start);
    return new RealProgram(limited, folder, more);
  }

  private void setUp(Map<String, String> environment) {
    for (String name :
        List.of("COLUMNS", "NO_COLOR", "JAVA_TOOL_OPTIONS", "HOSEWRIGHT_DATA", "HOSEWRIGHT_DB")) {
      environment.remove(name);
    }
    environment.put("JAVA_HOME", System.getProperty("java.home"));
    environment.put("HOSEWRIGHT_DATA", data().toString());
    environment.putAll(more);
  }

  /** The data folder of these runs, beside the folder they stand in. */
  public Path data() {
    return folder.resolveSibling(folder.getFileName() + "-data");
  }

  /** Names of what lies in the folder the program ran in. */
  public List<String> leftBehind() {
    List<String> names = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      files.forEach(file -> names.add(file.getFileName().toString()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return names;
  }
}
