package hosewright.store.database;

import hosewright.problem.BadInputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds who asks the server: in the environment, or in a file that only its owner may read. Never
 * on the command line, which everybody on the machine can see.
 */
public final class ServerLogin {
  static final String USER = "HOSEWRIGHT_DB_USER";
  static final String PASSWORD = "HOSEWRIGHT_DB_PASSWORD";
  static final String FILE = "HOSEWRIGHT_DB_LOGIN";

  private static final Set<PosixFilePermission> OWNERS =
      EnumSet.of(
          PosixFilePermission.OWNER_READ,
          PosixFilePermission.OWNER_WRITE,
          PosixFilePermission.OWNER_EXECUTE);
  private static final int MOST_BYTES = 10_000;

  private ServerLogin() {}

  /**
   * The login; what the environment says wins over the file, and who nobody names is the user of
   * this machine.
   *
   * @throws BadInputException when the file cannot be read, others may read it, or it says
   *     something else than {@code user: } and {@code password: }
   */
  public static Server.Login in(Map<String, String> environment) {
    Optional<String> file = said(environment, FILE);
    Optional<String> user = said(environment, USER);
    Optional<String> password = said(environment, PASSWORD);
    Map<String, String> kept = file.map(ServerLogin::read).orElse(Map.of());
    return new Server.Login(
        user.or(() -> Optional.ofNullable(kept.get("user")))
            .orElseGet(() -> System.getProperty("user.name")),
        password.or(() -> Optional.ofNullable(kept.get("password"))));
  }

  private static Optional<String> said(Map<String, String> environment, String name) {
    return Optional.ofNullable(environment.get(name)).filter(value -> !value.isBlank());
  }

  private static Map<String, String> read(String name) {
    try {
      Path file = Path.of(name);
      if (!OWNERS.containsAll(Files.getPosixFilePermissions(file))) {
        throw new BadInputException(
            FILE, name, "a file that nobody but its owner may read: chmod 600 " + name);
      }
      if (Files.size(file) > MOST_BYTES) {
        throw unusable(name);
      }
      return lines(name, Files.readAllLines(file));
    } catch (IOException | InvalidPathException e) {
      throw new BadInputException(FILE, name, "a text file that can be read");
    } catch (UnsupportedOperationException e) {
      throw new BadInputException(
          FILE,
          name,
          "this system cannot say who may read a file: give " + USER + " and " + PASSWORD);
    }
  }

  private static Map<String, String> lines(String name, List<String> lines) {
    String user = null;
    String password = null;
    for (String line : lines) {
      if (line.startsWith("user:")) {
        user = line.substring("user:".length()).strip();
      } else if (line.startsWith("password:")) {
        password = line.substring("password:".length()).strip();
      } else if (!line.isBlank()) {
        throw unusable(name);
      }
    }
    if (user == null || user.isEmpty() || password == null || password.isEmpty()) {
      throw unusable(name);
    }
    return Map.of("user", user, "password", password);
  }

  /** Says nothing of what stands in the file: it may be half a password. */
  private static BadInputException unusable(String name) {
    return new BadInputException(FILE, name, "two lines, 'user: NAME' and 'password: SECRET'");
  }
}
