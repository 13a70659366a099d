package hosewright.store.look;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.h2.mvstore.Cursor;
import org.h2.mvstore.DataUtils;
import org.h2.mvstore.MVMap;
import org.h2.mvstore.MVStore;
import org.h2.mvstore.MVStoreException;
import org.h2.mvstore.db.RowDataType;
import org.h2.mvstore.tx.VersionedValueType;
import org.h2.mvstore.type.LongDataType;
import org.h2.mvstore.type.StringDataType;
import org.h2.result.RowFactory;
import org.h2.result.SearchRow;
import org.h2.value.CompareMode;
import org.h2.value.TypeInfo;
import org.h2.value.Typed;
import org.h2.value.VersionedValue;

/**
 * Lists what a file of the embedded store holds that our migrations did not make, from its pages
 * and without running any of it.
 *
 * <p>H2 2.4.240 does these things of its own accord when it opens a file, and each is looked at: it
 * makes the data types that map {@code _} names, by class; it reads map {@code openTransactions} as
 * Java objects; and it runs every statement of the table of statements, map {@code table.0}, as it
 * was last committed.
 */
public final class StoreLook {
  private static final Pattern MAPS =
      Pattern.compile(
          "_|openTransactions|undoLog[.-]\\d+|lobMap|lobData|lobRef|tempLobMap"
              + "|(table|index|temp)\\.\\d+");

  /** Its columns: id, always 0, kind of object, statement. */
  private static final Typed[] META = {
    TypeInfo.TYPE_INTEGER, TypeInfo.TYPE_INTEGER, TypeInfo.TYPE_INTEGER, TypeInfo.TYPE_VARCHAR
  };

  private static final int STATEMENT = 3;

  private StoreLook() {}

  /** Another process has the file open just now. */
  public static final class Taken extends Exception {
    private static final long serialVersionUID = 1L;
  }

  /**
   * What our migrations did not make; nothing when the file may be opened.
   *
   * @throws Taken while another process has it open
   * @throws RuntimeException of the embedded store when its pages cannot be read
   */
  public static Set<String> foreign(Path file) throws Taken {
    Set<String> foreign = new TreeSet<>();
    KnownStatements known = KnownStatements.read();
    for (String statement : statements(file, foreign)) {
      if (!known.has(statement)) {
        foreign.add(statement);
      }
    }
    return foreign;
  }

  /**
   * All statements that opening the file would run.
   *
   * @param foreign gets what else is not ours
   */
  static List<String> statements(Path file, Set<String> foreign) throws Taken {
    MVStore store = open(file);
    try {
      for (String map : store.getMapNames()) {
        if (!MAPS.matcher(map).matches()) {
          foreign.add("map " + map);
        }
      }
      if (holdsAnything(store, "openTransactions")) {
        foreign.add("a transaction of another program");
      }
      foreignTypes(store, foreign);
      // What is named in it is read only if its types are known.
      return foreign.isEmpty() ? statements(store) : List.of();
    } finally {
      store.closeImmediately();
    }
  }

  private static MVStore open(Path file) throws Taken {
    try {
      return new MVStore.Builder().fileName(file.toString()).readOnly().autoCommitDisabled().open();
    } catch (MVStoreException e) {
      if (e.getErrorCode() == DataUtils.ERROR_FILE_LOCKED) {
        throw new Taken();
      }
      throw e;
    }
  }

  /**
   * Said by the page where a map begins, which an empty one has not: reading it would be too late.
   */
  private static boolean holdsAnything(MVStore store, String map) {
    String id = store.getMetaMap().get("name." + map);
    String root = id == null ? null : store.getLayoutMap().get("root." + id);
    return root != null && !root.equals("0");
  }

  private static void foreignTypes(MVStore store, Set<String> foreign) {
    if (!store.hasMap("_")) {
      return;
    }
    TypeNames names = new TypeNames();
    try {
      MVMap<String, String> types =
          store.openMap(
              "_",
              new MVMap.Builder<String, String>()
                  .keyType(StringDataType.INSTANCE)
                  .valueType(names));
      Cursor<String, String> all = types.cursor(null);
      while (all.hasNext()) {
        all.next();
      }
    } catch (MVStoreException e) {
      if (names.foreign().isEmpty()) {
        throw e;
      }
    }
    names.foreign().ifPresent(name -> foreign.add("data type " + name));
  }

  private static List<String> statements(MVStore store) {
    List<String> statements = new ArrayList<>();
    if (!store.hasMap("table.0")) {
      return statements;
    }
    MVMap<Long, VersionedValue<SearchRow>> meta =
        store.openMap(
            "table.0",
            new MVMap.Builder<Long, VersionedValue<SearchRow>>()
                .keyType(LongDataType.INSTANCE)
                .valueType(new VersionedValueType<>(rows())));
    Cursor<Long, VersionedValue<SearchRow>> all = meta.cursor(null);
    while (all.hasNext()) {
      all.next();
      // As it is, and as it was before a transaction that was never ended: H2 runs the latter.
      add(all.getValue().getCurrentValue(), statements);
      add(all.getValue().getCommittedValue(), statements);
    }
    return statements;
  }

  private static void add(SearchRow row, List<String> statements) {
    if (row != null) {
      statements.add(row.getValue(STATEMENT).getString());
    }
  }

  private static RowDataType rows() {
    CompareMode order = CompareMode.getInstance(null, 0);
    RowDataType rows =
        new RowDataType(null, order, null, new int[META.length], null, META.length, false);
    rows.setRowFactory(
        RowFactory.DefaultRowFactory.INSTANCE.createRowFactory(
            null, order, null, META, null, false));
    return rows;
  }
}
