package hosewright.store.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.UserPrincipal;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A real PostgreSQL server of these tests' own: on the loopback address, a free port, in a scratch
 * folder. It ends and goes with the process that started it, however that ends.
 */
public final class PostgresCluster {
  /** Set where a missing server is a failure, as in CI; elsewhere its tests are skipped. */
  private static final String REQUIRED = "HOSEWRIGHT_TEST_POSTGRES";

  public static final String USER = "counter";
  public static final String PASSWORD = "six feet of suction";

  /** Waits for the end of its input, which comes when the process that tests ends. */
  private static final String KEEPER =
      """
      "$1/postgres" -D "$2/data" -p "$3" -c listen_addresses=127.0.0.1 \
        -c unix_socket_directories= -c max_connections=150 $4 >"$2/log" 2>&1 &
      server=$!
      cat >/dev/null
      kill -QUIT $server
      wait $server
      rm -rf "$2"
      """;

  private static PostgresCluster running;

  private final int port;

  private PostgresCluster(int port) {
    this.port = port;
  }

  /**
   * The server these tests share, started when first asked for; skips a test where there is none.
   */
  public static synchronized PostgresCluster shared() {
    if (running == null) {
      // Nothing of it needs to survive a power cut.
      running = start("-c fsync=off -c full_page_writes=off");
    }
    return running;
  }

  /**
   * A server of its own.
   *
   * @param settings further settings as the server's command line takes them
   */
  public static PostgresCluster start(String settings) {
    Optional<Path> programs = programs();
    if (System.getenv(REQUIRED) != null) {
      assertThat(programs).as("a PostgreSQL server, which %s asks for", REQUIRED).isPresent();
    }
    assumeTrue(programs.isPresent(), "no PostgreSQL server is installed here: not tested on one");
    try {
      return start(programs.orElseThrow(), settings);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static PostgresCluster start(Path programs, String settings)
      throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("hosewright-postgres");
    if (isRoot()) {
      Files.setOwner(folder, unprivileged(folder));
    }
    run(
        List.of(
            "sh",
            "-c",
            "umask 077; echo \"$3\" >\"$2/password\" && exec \"$1/initdb\" -D \"$2/data\" -N"
                + " -U "
                + USER
                + " -A scram-sha-256 --pwfile=\"$2/password\" -E UTF8 --locale=C",
            "initdb",
            programs.toString(),
            folder.toString(),
            PASSWORD));
    int port = freePort();
    asServerUser(
            List.of(
                "sh",
                "-c",
                KEEPER,
                "keeper",
                programs.toString(),
                folder.toString(),
                String.valueOf(port),
                settings))
        .start();
    PostgresCluster cluster = new PostgresCluster(port);
    cluster.awaitAnswer(folder.resolve("log"));
    return cluster;
  }

  int port() {
    return port;
  }

  /** An address as a user gives it. */
  public String url(String database) {
    return "jdbc:postgresql://127.0.0.1:%d/%s".formatted(port, database);
  }

  public Server server(String database) {
    return Server.of("--db", url(database), new Server.Login(USER, Optional.of(PASSWORD)));
  }

  /** What a user's environment says to work with a database. */
  public Map<String, String> environment(String database) {
    return Map.of(
        "HOSEWRIGHT_DB",
        url(database),
        "HOSEWRIGHT_DB_USER",
        USER,
        "HOSEWRIGHT_DB_PASSWORD",
        PASSWORD);
  }

  /** Runs a statement in the server's own first database. */
  public void execute(String sql) {
    executeIn("postgres", sql);
  }

  public void executeIn(String database, String sql) {
    try (Connection connection = DriverManager.getConnection(url(database), USER, PASSWORD);
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    } catch (SQLException e) {
      throw new IllegalStateException(sql, e);
    }
  }

  private void awaitAnswer(Path log) throws IOException, InterruptedException {
    Instant deadline = Instant.now().plus(Duration.ofMinutes(2));
    while (true) {
      try {
        DriverManager.getConnection(url("postgres"), USER, PASSWORD).close();
        return;
      } catch (SQLException e) {
        if (Instant.now().isAfter(deadline)) {
          throw new IllegalStateException(Files.readString(log), e);
        }
        Thread.sleep(50);
      }
    }
  }

  private static void run(List<String> command) throws IOException, InterruptedException {
    Process process = asServerUser(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
  }

  /** The server refuses to be run by root. */
  private static ProcessBuilder asServerUser(List<String> command) throws IOException {
    List<String> words = new ArrayList<>();
    if (isRoot()) {
      words.addAll(List.of("runuser", "-u", "postgres", "--"));
    }
    words.addAll(command);
    return new ProcessBuilder(words).directory(Path.of("/").toFile());
  }

  private static boolean isRoot() {
    return System.getProperty("user.name").equals("root");
  }

  private static UserPrincipal unprivileged(Path folder) throws IOException {
    return folder.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByName("postgres");
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }

  /** Where Debian keeps them, newest first, then wherever a shell would find them. */
  private static Optional<Path> programs() {
    List<Path> places = new ArrayList<>();
    try (Stream<Path> versions = Files.list(Path.of("/usr/lib/postgresql"))) {
      versions
          .sorted(Comparator.comparing(PostgresCluster::version).reversed())
          .forEach(version -> places.add(version.resolve("bin")));
    } catch (IOException e) {
      // Not a Debian machine.
    }
    Pattern.compile(File.pathSeparator)
        .splitAsStream(System.getenv("PATH"))
        .forEach(place -> places.add(Path.of(place)));
    return places.stream()
        .filter(place -> Files.isExecutable(place.resolve("initdb")))
        .filter(place -> Files.isExecutable(place.resolve("postgres")))
        .findFirst();
  }

  private static int version(Path folder) {
    String name = folder.getFileName().toString();
    return name.matches("\\d{1,4}") ? Integer.parseInt(name) : 0;
  }
}
