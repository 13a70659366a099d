package hosewright.store.database;

import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import hosewright.problem.NoSuchThingException;
import hosewright.problem.TroubleException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.h2.jdbcx.JdbcConnectionPool;
import org.postgresql.ds.PGConnectionPoolDataSource;

/** Connections to a PostgreSQL server. */
final class ServerPool {
  private static final int CONNECT_SECONDS = 10;

  /** Nothing this program asks keeps a living server silent for so long. */
  private static final int SILENCE_SECONDS = 300;

  private ServerPool() {}

  /**
   * Opens connections and sees that the database keeps text as the embedded store does.
   *
   * @throws BadInputException when the server cannot be reached, does not let this user in, or has
   *     no such database, or one that would sort or spell otherwise
   */
  static JdbcConnectionPool open(Server server) {
    JdbcConnectionPool pool = JdbcConnectionPool.create(source(server));
    try (Connection first = pool.getConnection()) {
      requireSameText(server, first);
      return pool;
    } catch (SQLException e) {
      pool.dispose();
      throw refused(server, e);
    } catch (RuntimeException e) {
      pool.dispose();
      throw e;
    }
  }

  private static PGConnectionPoolDataSource source(Server server) {
    PGConnectionPoolDataSource source = new PGConnectionPoolDataSource();
    source.setServerNames(new String[] {server.host()});
    source.setPortNumbers(new int[] {server.port()});
    source.setDatabaseName(server.database());
    source.setUser(server.login().user());
    source.setPassword(server.login().password().orElse(""));
    source.setSslMode(server.parameters().get("sslmode"));
    source.setSslRootCert(server.parameters().get("sslrootcert"));
    source.setApplicationName("hosewright");
    source.setConnectTimeout(CONNECT_SECONDS);
    source.setSocketTimeout(SILENCE_SECONDS);
    source.setTcpKeepAlive(true);
    source.setReWriteBatchedInserts(true);
    source.setOptions("-c lock_timeout=20s -c default_transaction_isolation=read\\ committed");
    return source;
  }

  /** Lists come out in the same order and searches find the same rows only if text is the same. */
  private static void requireSameText(Server server, Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row =
            statement.executeQuery(
                "SELECT current_setting('server_encoding') = 'UTF8' AND 'B' < 'a' AND 'z' < 'é'")) {
      row.next();
      if (!row.getBoolean(1)) {
        throw ConflictException.stateForbids(
            "database",
            server.address(),
            "does not keep UTF-8 or does not sort by code point",
            "make one with CREATE DATABASE %s TEMPLATE template0 ENCODING 'UTF8' LC_COLLATE 'C' LC_CTYPE 'C'"
                .formatted(server.database()));
      }
    }
  }

  private static RuntimeException refused(Server server, SQLException e) {
    String state = e.getSQLState() == null ? "" : e.getSQLState();
    if (state.startsWith("28") || (state.equals("08004") && server.login().password().isEmpty())) {
      return new BadInputException(
          "user",
          server.login().user(),
          "the server at %s does not let this user in with this password: it takes %s and %s, or a"
                  .formatted(server.address(), ServerLogin.USER, ServerLogin.PASSWORD)
              + " file named in "
              + ServerLogin.FILE);
    }
    return switch (state) {
      case "3D000" ->
          new NoSuchThingException(
              "database", server.address(), List.of(), "the server has none so named");
      case "53300" -> trouble(server, "the server has no connection left: try again later");
      case "57P03" -> trouble(server, "the server is starting or stopping: try again later");
      case "08001", "08004", "08006", "08P01" ->
          trouble(server, "no PostgreSQL server answers there");
      default ->
          StoreTrouble.of(e, "database " + server.address())
              .map(RuntimeException.class::cast)
              .orElseGet(() -> unforeseen(e));
    };
  }

  private static TroubleException trouble(Server server, String what) {
    return new TroubleException("database", server.address(), what, TroubleException.Kept.NOTHING);
  }

  private static RuntimeException unforeseen(SQLException e) {
    return new IllegalStateException("cannot open the database", e);
  }
}
