package hosewright.line.goods;

import hosewright.catalogue.Sort;
import hosewright.csv.ReferenceTable;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.csv.CSVRecord;

/**
 * Where the trade puts a sort of thing, and why.
 *
 * @param word the plain word that means it among others; empty where only its own name does
 * @param rank of the sorts a plain word means, those of the least rank that are sold are taken
 * @param order of what stands at one place, the water meets those of the least order first; empty
 *     where nothing else stands there
 */
public record Standing(
    Sort sort, String word, OptionalInt rank, Place place, OptionalInt order, String why) {
  private static final Map<Sort, Standing> ALL = load();

  /** Of a sort that a buyer may ask for; empty for one that says nothing of where it stands. */
  static Optional<Standing> of(Sort sort) {
    return Optional.ofNullable(ALL.get(sort));
  }

  /** When the water meets a thing among those that stand at one place; those unknown last. */
  public static int order(Sort sort) {
    return of(sort).map(Standing::order).orElse(OptionalInt.empty()).orElse(Integer.MAX_VALUE);
  }

  /** Every sort that may be asked for, as the table has them. */
  static List<Standing> all() {
    return List.copyOf(ALL.values());
  }

  private static Map<Sort, Standing> load() {
    Map<Sort, Standing> standings = new EnumMap<>(Sort.class);
    ReferenceTable.rows("line/accessories.csv", Standing::read)
        .forEach(row -> standings.put(row.sort(), row));
    return standings;
  }

  private static Standing read(CSVRecord row) {
    String word = row.get("sort");
    return new Standing(
        Arrays.stream(Sort.values())
            .filter(sort -> sort.word().equals(word))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("no sort " + word)),
        row.get("word"),
        number(row.get("rank")),
        Place.of(row.get("place")),
        number(row.get("order")),
        row.get("why"));
  }

  private static OptionalInt number(String cell) {
    return cell.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(cell));
  }
}
