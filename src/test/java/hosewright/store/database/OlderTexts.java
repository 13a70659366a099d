package hosewright.store.database;

import hosewright.store.seal.CatalogueSeals;
import hosewright.store.seal.Seal;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.UpdatableRecord;

/** Gives books texts that no door lets in any more, sealed as if they had always been so. */
public final class OlderTexts {
  private static final String DOCUMENT = "DOCUMENT";

  private OlderTexts() {}

  /**
   * Puts marks in the place of words, in every text of every table that has one of them.
   *
   * @return how many rows have them now
   */
  public static int put(Database books, List<String> words, String marks) {
    AtomicInteger rows = new AtomicInteger();
    books.together(
        open -> {
          DSLContext inside = open.context();
          for (Table<?> table : BookTables.parentsFirst()) {
            List<? extends UpdatableRecord<?>> changed =
                inside.selectFrom(table).fetch().stream()
                    .map(row -> (UpdatableRecord<?>) row)
                    .filter(row -> changed(row, words, marks))
                    .toList();
            if (Seal.isOn(table)) {
              Rows.update(inside, table, changed);
            } else {
              changed.forEach(UpdatableRecord::update);
            }
            rows.addAndGet(changed.size());
          }
          CatalogueSeals.write(inside);
        });
    return rows.get();
  }

  private static boolean changed(Record row, List<String> words, String marks) {
    boolean changed = false;
    for (Field<?> field : row.fields()) {
      if (row.get(field) instanceof String text && words.stream().anyMatch(text::contains)) {
        String by = field.getName().equals(DOCUMENT) ? inJson(marks) : marks;
        String marked = words.stream().reduce(text, (all, word) -> all.replace(word, by));
        row.set(field.coerce(String.class), marked);
        changed = true;
      }
    }
    return changed;
  }

  private static String inJson(String marks) {
    StringBuilder escaped = new StringBuilder();
    marks.chars().forEach(unit -> escaped.append("\\u%04x".formatted(unit)));
    return escaped.toString();
  }
}
