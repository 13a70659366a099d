package hosewright.store.database;

import hosewright.store.db.DefaultSchema;
import hosewright.store.seal.CatalogueSeals;
import hosewright.store.seal.Seal;
import java.util.List;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.migration.Context;
import org.flywaydb.core.api.migration.JavaMigration;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.Table;
import org.jooq.UpdatableRecord;
import org.jooq.impl.DSL;

/**
 * Seals every row there is, once, when the migrations in {@code sql/} have been through.
 *
 * <p>It is raised to another {@link #ROUND} with a migration that changes what rows say other than
 * by an empty column.
 */
final class SealRows implements JavaMigration {
  private static final int ROUND = 1;
  private static final int ROWS_AT_A_TIME = 1000;

  private final SQLDialect dialect;

  SealRows(SQLDialect dialect) {
    this.dialect = dialect;
  }

  /** None: it comes after those that have one. */
  @Override
  public MigrationVersion getVersion() {
    return null;
  }

  @Override
  public String getDescription() {
    return Schema.SEALED;
  }

  @Override
  public Integer getChecksum() {
    return ROUND;
  }

  /** Whole or not at all, together with the word that it is done. */
  @Override
  public boolean canExecuteInTransaction() {
    return true;
  }

  @Override
  public void migrate(Context context) {
    DSLContext inside = DSL.using(context.getConnection(), dialect, Database.settings());
    DefaultSchema.DEFAULT_SCHEMA.getTables().stream()
        .filter(Seal::isOn)
        .forEach(table -> seal(inside, table));
    CatalogueSeals.write(inside);
  }

  private static void seal(DSLContext inside, Table<?> table) {
    try (Cursor<?> rows = inside.selectFrom(table).fetchSize(ROWS_AT_A_TIME).fetchLazy()) {
      while (rows.hasNext()) {
        List<? extends UpdatableRecord<?>> some =
            rows.fetchNext(ROWS_AT_A_TIME).stream().map(row -> (UpdatableRecord<?>) row).toList();
        Rows.update(inside, table, some);
      }
    }
  }
}
