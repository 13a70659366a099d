package hosewright.catalogue;

import hosewright.csv.ReferenceTable;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;

/**
 * What the rows of a catalogue leave unsaid that the trade's rules would ask.
 *
 * @param column the column left empty
 * @param missing items whose row leaves it so
 * @param items items it would be said of
 * @param kinds the kinds of those items
 * @param costs what cannot be held for them
 */
public record MissingFacts(
    String column, int missing, int items, List<ItemKind> kinds, String costs) {

  public MissingFacts {
    kinds = List.copyOf(kinds);
  }

  /** One for each column with something missing, in the order of the columns. */
  public static List<MissingFacts> of(Catalogue catalogue) {
    return ReferenceTable.rows("catalogue/missing-facts.csv", row -> counted(row, catalogue))
        .stream()
        .filter(fact -> fact.missing() > 0)
        .toList();
  }

  private static MissingFacts counted(CSVRecord row, Catalogue catalogue) {
    Set<String> words = Set.copyOf(ReferenceTable.list(row, "kinds", ";"));
    List<ItemKind> kinds =
        Arrays.stream(ItemKind.values()).filter(kind -> words.contains(kind.word())).toList();
    List<Item> items = kinds.stream().flatMap(kind -> catalogue.ofKind(kind).stream()).toList();
    String column = row.get("column");
    int missing =
        (int) items.stream().filter(item -> !ItemFacts.of(item).containsKey(column)).count();
    return new MissingFacts(column, missing, items.size(), kinds, row.get("costs"));
  }

  /** As a sentence without its full stop. */
  public String sentence() {
    return "%s: %d of %d (%s) leave it empty; %s"
        .formatted(
            column,
            missing,
            items,
            kinds.stream().map(ItemKind::word).collect(Collectors.joining(", ")),
            costs);
  }
}
