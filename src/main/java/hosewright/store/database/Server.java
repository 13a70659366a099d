package hosewright.store.database;

import hosewright.problem.BadInputException;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A PostgreSQL database that a whole company shares, and who asks it.
 *
 * @param host name or address, IPv6 in brackets
 * @param parameters how the connection is protected, as the driver's {@code name=value}
 */
public record Server(
    String host, int port, String database, Map<String, String> parameters, Login login) {
  private static final int USUAL_PORT = 5432;
  private static final Pattern URL =
      Pattern.compile(
          "jdbc:postgresql://(?<host>[\\w.-]+|\\[[0-9a-fA-F:.]+\\])(:(?<port>\\d{1,5}))?"
              + "/(?<database>[\\w.-]+)(\\?(?<parameters>.*))?");

  /** Only these: others of the driver's parameters load classes, or carry secrets. */
  private static final Pattern PARAMETERS =
      Pattern.compile("((sslmode|sslrootcert)=[\\w./\\\\: -]+(&|$))*");

  /**
   * Who asks a server.
   *
   * @param password empty where the server asks none
   */
  public record Login(String user, Optional<String> password) {
    /** Without the password, so that no log and no message can give it away. */
    @Override
    public String toString() {
      return user;
    }
  }

  /**
   * Reads {@code jdbc:postgresql://HOST[:PORT]/DATABASE[?sslmode=...&sslrootcert=...]}.
   *
   * @param field what the user calls the place the address came from
   * @throws BadInputException when it is none; a password in it is refused and not repeated
   */
  public static Server of(String field, String url, Login login) {
    Matcher parts = URL.matcher(url);
    if (!parts.matches()) {
      throw new BadInputException(
          field,
          withoutSecrets(url),
          "jdbc:postgresql://HOST:PORT/DATABASE; user and password come from"
              + " HOSEWRIGHT_DB_USER and HOSEWRIGHT_DB_PASSWORD or a file named in"
              + " HOSEWRIGHT_DB_LOGIN");
    }
    String parameters = Optional.ofNullable(parts.group("parameters")).orElse("");
    if (!PARAMETERS.matcher(parameters).matches()) {
      throw new BadInputException(
          field,
          withoutSecrets(url),
          "sslmode and sslrootcert are all that may follow the question mark; user and password"
              + " never stand in an address");
    }
    int port = Optional.ofNullable(parts.group("port")).map(Integer::valueOf).orElse(USUAL_PORT);
    if (port < 1 || port > 65535) {
      throw new BadInputException(field, url, "a port from 1 to 65535");
    }
    return new Server(parts.group("host"), port, parts.group("database"), pairs(parameters), login);
  }

  /** The address as a user may see it. */
  public String address() {
    return "jdbc:postgresql://%s:%d/%s".formatted(host, port, database);
  }

  @Override
  public String toString() {
    return address();
  }

  private static Map<String, String> pairs(String parameters) {
    return Pattern.compile("&")
        .splitAsStream(parameters)
        .filter(pair -> !pair.isEmpty())
        .map(pair -> pair.split("=", 2))
        .collect(
            Collectors.toUnmodifiableMap(
                pair -> pair[0], pair -> pair[1], (first, second) -> second));
  }

  private static String withoutSecrets(String url) {
    return url.replaceFirst("//.*@", "//...@").replaceFirst("[?;].*", "...");
  }
}
