package hosewright.store.seal;

import static hosewright.store.db.Tables.CATALOGUE_LOAD;
import static hosewright.store.db.Tables.CATALOGUE_SEAL;
import static hosewright.store.db.Tables.COST;
import static hosewright.store.db.Tables.ITEM;
import static hosewright.store.db.Tables.ITEM_DERATING;
import static hosewright.store.db.Tables.ITEM_END;
import static hosewright.store.db.Tables.ITEM_FLUID;
import static hosewright.store.db.Tables.PRICE;
import static hosewright.store.db.Tables.SUPPLIER;

import hosewright.store.db.tables.records.CatalogueSealRecord;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Table;
import org.jooq.impl.DSL;

/** What a load of a catalogue left in use, table by table. */
public final class CatalogueSeals {
  /** The tables of a catalogue, and which of their rows are in use. */
  private static final Map<Table<?>, Condition> IN_USE = inUse();

  private CatalogueSeals() {}

  private static Map<Table<?>, Condition> inUse() {
    Map<Table<?>, Condition> inUse = new LinkedHashMap<>();
    inUse.put(SUPPLIER, SUPPLIER.FILE_ORDER.isNotNull());
    inUse.put(ITEM, ITEM.FILE_ORDER.isNotNull());
    inUse.put(ITEM_END, DSL.noCondition());
    inUse.put(ITEM_DERATING, DSL.noCondition());
    inUse.put(ITEM_FLUID, DSL.noCondition());
    inUse.put(PRICE, PRICE.REPLACED_BY.isNull());
    inUse.put(COST, COST.REPLACED_BY.isNull());
    return inUse;
  }

  /**
   * Writes down what stands in use, under the number of the last load; nothing before the first.
   */
  public static void write(DSLContext inside) {
    lastLoad(inside).ifPresent(load -> write(inside, load));
  }

  private static void write(DSLContext inside, int load) {
    inside.deleteFrom(CATALOGUE_SEAL).where(CATALOGUE_SEAL.LOAD_NUMBER.eq(load)).execute();
    IN_USE.forEach(
        (table, inUse) -> {
          RowSum.Read read = RowSum.of(inside, table, inUse);
          CatalogueSealRecord row =
              new CatalogueSealRecord(
                  load,
                  table.getName(),
                  read.sum().rows(),
                  read.sum().seals(),
                  read.digest(),
                  null);
          Seal.put(row, CATALOGUE_SEAL);
          inside.executeInsert(row);
        });
  }

  /** What a load left, by the names of tables; empty where that was not written down. */
  static Map<String, RowSum> left(DSLContext context, OptionalInt load) {
    Map<String, RowSum> left = new LinkedHashMap<>();
    rows(context, load)
        .forEach(
            row -> left.put(row.getTableName(), new RowSum(row.getRowCount(), row.getSealSum())));
    return left;
  }

  /** The digests over what the last load left, by the names of tables; empty before the first. */
  public static Map<String, String> digests(DSLContext context) {
    Map<String, String> digests = new LinkedHashMap<>();
    rows(context, lastLoad(context))
        .forEach(row -> digests.put(row.getTableName(), row.getRowsDigest()));
    return digests;
  }

  /** The tables whose rows in use are not those that the last load left. */
  public static List<Table<?>> unlike(DSLContext context) {
    Map<String, String> digests = digests(context);
    List<Table<?>> unlike = new ArrayList<>();
    IN_USE.forEach(
        (table, inUse) -> {
          String digest = digests.get(table.getName());
          if (digest != null && !digest.equals(RowSum.of(context, table, inUse).digest())) {
            unlike.add(table);
          }
        });
    return unlike;
  }

  private static List<CatalogueSealRecord> rows(DSLContext context, OptionalInt load) {
    return load.isEmpty()
        ? List.of()
        : context
            .selectFrom(CATALOGUE_SEAL)
            .where(CATALOGUE_SEAL.LOAD_NUMBER.eq(load.getAsInt()))
            .fetch();
  }

  /** Empty before the first. */
  static OptionalInt lastLoad(DSLContext context) {
    Integer last =
        context
            .select(DSL.max(CATALOGUE_LOAD.LOAD_NUMBER))
            .from(CATALOGUE_LOAD)
            .fetchSingle()
            .value1();
    return last == null ? OptionalInt.empty() : OptionalInt.of(last);
  }
}
