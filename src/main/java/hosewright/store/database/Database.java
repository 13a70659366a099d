package hosewright.store.database;

import hosewright.problem.BadInputException;
import hosewright.problem.RefusalException;
import hosewright.store.folder.DataFolder;
import hosewright.store.folder.Replacement;
import hosewright.store.seal.FileSum;
import hosewright.store.seal.SealCheck;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Function;
import org.apache.commons.lang3.ArrayUtils;
import org.h2.jdbcx.JdbcConnectionPool;
import org.jooq.Configuration;
import org.jooq.DSLContext;
import org.jooq.ExecuteListener;
import org.jooq.Log;
import org.jooq.RecordListenerProvider;
import org.jooq.SQLDialect;
import org.jooq.TransactionProvider;
import org.jooq.conf.RenderQuotedNames;
import org.jooq.conf.Settings;
import org.jooq.impl.DSL;
import org.jooq.impl.DataSourceConnectionProvider;
import org.jooq.impl.DefaultConfiguration;
import org.jooq.impl.DefaultTransactionProvider;
import org.jooq.tools.JooqLogger;

/**
 * The store, its schema up to date: embedded in a data folder, where one process at a time owns it,
 * or a PostgreSQL database that many processes use at once.
 *
 * <p>Threads of one process may use it at once.
 */
public final class Database implements AutoCloseable {
  /** How long to wait while another process, such as a script's previous command, ends. */
  static final Duration PATIENCE = Duration.ofSeconds(10);

  private static final int CONNECTIONS = 32;

  static {
    // jOOQ greets and talks about versions on its logger; a command's output is the user's.
    JooqLogger.globalThreshold(Log.Level.ERROR);
  }

  private final String where;
  private final HighWaterMarks marks;
  private final JdbcConnectionPool pool;
  private final DSLContext context;
  private Optional<FileSum> sum = Optional.empty();
  private boolean trusted = true;
  private boolean changed;

  private Database(
      String where, HighWaterMarks marks, JdbcConnectionPool pool, DSLContext context) {
    this.where = where;
    this.marks = marks;
    this.pool = pool;
    this.context = context;
  }

  /**
   * Opens the store of a data folder, making both if they are not there yet.
   *
   * @throws BadInputException when the folder cannot be used, another process keeps the store open,
   *     or a newer version of this program wrote it
   */
  public static Database open(Path dataFolder) {
    return open(dataFolder, PATIENCE);
  }

  /**
   * Opens the store of a data folder within another limit to waiting for who has it open.
   *
   * @param patience zero to be told at once
   */
  public static Database open(Path dataFolder, Duration patience) {
    Path folder = DataFolder.usable(dataFolder);
    Replacement.clear(folder);
    FileSum sum = FileSum.of(folder.resolve(DataFolder.STORE));
    if (left(folder, sum) == FileSum.State.CHANGED) {
      sum.givenUp();
      throw new Damage(folder).told();
    }
    return open(folder, patience, sum);
  }

  /**
   * Opens the store of a data folder even where its file does not read as it was left, to look what
   * is damaged.
   */
  public static Database openAsItIs(Path dataFolder) {
    Path folder = DataFolder.usable(dataFolder);
    Replacement.clear(folder);
    FileSum sum = FileSum.of(folder.resolve(DataFolder.STORE));
    boolean changed = left(folder, sum) == FileSum.State.CHANGED;
    Database database = open(folder, PATIENCE, sum);
    database.changed = changed;
    return database;
  }

  private static Database open(Path folder, Duration patience, FileSum sum) {
    Damage damage = new Damage(folder);
    try {
      JdbcConnectionPool pool = EmbeddedPool.open(folder, patience);
      Database database =
          opened("data folder " + folder, HighWaterMarks.in(folder), pool, SQLDialect.H2, damage)
              .with(made -> sum.forget())
              .with(Schema::bringUpToDate)
              .with(Database::writeEachCommit);
      database.sum = Optional.of(sum);
      return database;
    } catch (RefusalException e) {
      sum.givenUp();
      throw e;
    } catch (UncheckedIOException e) {
      sum.givenUp();
      throw DataFolder.trouble(folder, e.getCause());
    } catch (RuntimeException e) {
      sum.givenUp();
      throw damage.of(e).map(RuntimeException.class::cast).orElse(e);
    }
  }

  private static FileSum.State left(Path folder, FileSum sum) {
    try {
      return sum.open();
    } catch (UncheckedIOException e) {
      sum.givenUp();
      throw DataFolder.trouble(folder, e.getCause());
    }
  }

  /**
   * Opens the store on a server.
   *
   * @param dataFolder keeps what this machine must remember whatever becomes of the server
   * @throws BadInputException when the server cannot be used, or a newer version of this program
   *     wrote its store
   */
  public static Database open(Server server, Path dataFolder) {
    Path folder = DataFolder.usable(dataFolder);
    Replacement.clear(folder);
    return opened(
            "database " + server.address(),
            HighWaterMarks.of(server, folder),
            ServerPool.open(server),
            SQLDialect.POSTGRES)
        .with(Schema::bringUpToDate);
  }

  /** A store in memory that holds what the migrations put in and nothing else. */
  static Database unused() {
    String url = "jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1";
    return opened(
            "memory",
            HighWaterMarks.in(Path.of("")),
            JdbcConnectionPool.create(url, "sa", ""),
            SQLDialect.H2)
        .with(Schema::bringUpToDate);
  }

  /**
   * A new embedded store with the tables of an earlier version and without a row.
   *
   * @param folder an empty one
   */
  public static Database fresh(Path folder, int schema) {
    return opened(
            "data folder " + folder,
            HighWaterMarks.in(folder),
            EmbeddedPool.open(folder, PATIENCE),
            SQLDialect.H2)
        .with(made -> Schema.make(made, schema))
        .with(Database::writeEachCommit);
  }

  /**
   * Has an embedded store write each commit before it is told: a quote whose number somebody knows
   * must survive a power cut. The store keeps this; tables are made before, which takes a fraction
   * of the time.
   */
  private void writeEachCommit() {
    context.execute("SET WRITE_DELAY 0");
  }

  /** Brings a store of an earlier version up to this one. */
  public void bringUpToDate() {
    Schema.bringUpToDate(this);
  }

  private static Database opened(
      String where,
      HighWaterMarks marks,
      JdbcConnectionPool pool,
      SQLDialect dialect,
      ExecuteListener... more) {
    pool.setMaxConnections(CONNECTIONS);
    DefaultConfiguration configuration = new DefaultConfiguration();
    configuration.set(dialect);
    configuration.set(settings());
    configuration.set(ArrayUtils.addFirst(more, new StoreTrouble(where)));
    configuration.set(new SealCheck());
    configuration.set(new Connections(new DataSourceConnectionProvider(pool), where));
    configuration.set(new Transactions(transactions(configuration), where));
    return new Database(where, marks, pool, DSL.using(configuration));
  }

  private Database with(Consumer<Database> schema) {
    try {
      schema.accept(this);
      return this;
    } catch (RuntimeException e) {
      close();
      throw e;
    }
  }

  private static TransactionProvider transactions(Configuration configuration) {
    TransactionProvider usual = new DefaultTransactionProvider(configuration.connectionProvider());
    return configuration.family() == SQLDialect.H2 ? new OneAtATime(usual) : usual;
  }

  /**
   * Does several things as one: all are kept, or none when one of them fails.
   *
   * @param work gets the database to do them through; it must not be closed or kept
   */
  public void together(Consumer<Database> work) {
    context.transaction(nested -> work.accept(new Database(where, marks, pool, nested.dsl())));
  }

  /**
   * Reads several things as they stood at one moment, whatever others put in their place meanwhile.
   *
   * @param reading gets the database to read through; it must not be closed or kept
   */
  public <T> T steadily(Function<Database, T> reading) {
    return context.transactionResult(
        nested -> {
          // The embedded store has one process in it, which reads and writes in turn.
          if (nested.family() == SQLDialect.POSTGRES) {
            nested.dsl().execute("SET TRANSACTION ISOLATION LEVEL REPEATABLE READ READ ONLY");
          }
          return reading.apply(new Database(where, marks, pool, nested.dsl()));
        });
  }

  /**
   * Reads whole tables steadily and holds no more of them than is fetched at a time, however many
   * rows they have.
   *
   * @param reading gets the database to read through; it must not be closed or kept
   */
  public <T> T rowByRow(Function<Database, T> reading) {
    if (context.family() == SQLDialect.POSTGRES) {
      return steadily(reading);
    }
    return steadily(
        steady -> {
          steady.context.execute("SET LAZY_QUERY_EXECUTION TRUE");
          try {
            return reading.apply(steady);
          } finally {
            steady.context.execute("SET LAZY_QUERY_EXECUTION FALSE");
          }
        });
  }

  /** The store as a user knows it: which data folder, or which database. */
  public String where() {
    return where;
  }

  public HighWaterMarks marks() {
    return marks;
  }

  public DSLContext context() {
    return context;
  }

  JdbcConnectionPool pool() {
    return pool;
  }

  /** The same store, its rows read as they are, whether they are damaged or not. */
  public Database asItIs() {
    return new Database(
        where, marks, pool, context.configuration().derive(new RecordListenerProvider[0]).dsl());
  }

  /** Whether the file of an embedded store was not as it was left, when opened as it is. */
  boolean isChanged() {
    return changed;
  }

  /** Says nothing, when closed, of how an embedded store is left: it is damaged. */
  public void distrust() {
    trusted = false;
  }

  @Override
  public void close() {
    pool.dispose();
    EmbeddedPool.closed(pool);
    sum.ifPresent(trusted ? FileSum::closed : FileSum::givenUp);
  }

  /** Names go out unquoted, so that the same code runs where upper case is not the rule. */
  static Settings settings() {
    return new Settings()
        .withRenderSchema(false)
        .withRenderQuotedNames(RenderQuotedNames.EXPLICIT_DEFAULT_UNQUOTED)
        .withExecuteLogging(false);
  }
}
