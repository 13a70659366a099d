package hosewright.tender;

import hosewright.csv.CsvStream;
import hosewright.problem.BadInputException;
import hosewright.problem.PlainText;
import hosewright.problem.Problem;
import java.io.Reader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** The rows of a tender file, read one by one. */
public final class TenderFile implements Iterator<TenderRow>, AutoCloseable {
  /** A worksheet has 1,048,576 rows, and the summary a head. */
  public static final int MOST_ROWS = 1_000_000;

  private static final int LONGEST_ID = 200;

  private final CsvStream stream;
  private final TenderColumns columns;
  private final Set<Integer> suspects;
  private final Map<String, Long> firstLines = new HashMap<>();

  private TenderFile(String name, Reader text, Set<Integer> suspects) {
    this.stream = new CsvStream(name, text);
    this.columns = TenderColumns.of(name, stream.header());
    this.suspects = suspects;
  }

  /**
   * What a first reading found.
   *
   * @param suspects hashes of ids that seem to stand more than once; ids themselves are not held,
   *     so that a long file takes no more memory than a short one
   */
  public record Survey(int rows, Set<Integer> suspects) {}

  /**
   * Reads the file through.
   *
   * @throws BadInputException when its header is wrong, it is no CSV text, or it has no row or too
   *     many
   */
  public static Survey survey(String name, Reader text) {
    return survey(name, text, row -> {});
  }

  /**
   * Reads the file through.
   *
   * @param reader told each row as it comes
   */
  public static Survey survey(String name, Reader text, Consumer<TenderRow> reader) {
    try (TenderFile file = new TenderFile(name, text, Set.of())) {
      int[] hashes = new int[1024];
      int rows = 0;
      while (file.hasNext()) {
        if (rows == MOST_ROWS) {
          throw new BadInputException(
              name, "over " + MOST_ROWS + " rows", "at most " + MOST_ROWS + "; split the file");
        }
        if (rows == hashes.length) {
          hashes = Arrays.copyOf(hashes, rows * 2);
        }
        TenderRow row = file.next();
        reader.accept(row);
        hashes[rows++] = row.id().hashCode();
      }
      if (rows == 0) {
        throw new BadInputException(name, "", "at least one row below the header");
      }
      return new Survey(rows, repeated(hashes, rows));
    }
  }

  private static Set<Integer> repeated(int[] hashes, int rows) {
    Arrays.sort(hashes, 0, rows);
    Set<Integer> repeated = new HashSet<>();
    for (int i = 1; i < rows; i++) {
      if (hashes[i] == hashes[i - 1]) {
        repeated.add(hashes[i]);
      }
    }
    return repeated;
  }

  /** Reads the file again, row by row. */
  public static TenderFile rows(String name, Reader text, Survey survey) {
    return new TenderFile(name, text, survey.suspects());
  }

  @Override
  public boolean hasNext() {
    return stream.hasNext();
  }

  @Override
  public TenderRow next() {
    CsvStream.Line line = stream.next();
    List<String> cells = line.cells();
    if (cells.size() != columns.count()) {
      return new TenderRow(
          line.number(),
          "",
          Map.of(),
          Optional.empty(),
          List.of(
              Problem.of(
                  "line " + line.number(),
                  cells.size() + " cells",
                  columns.count()
                      + " cells, as in the header; put text with a comma in double quotes")));
    }
    // A row whose text may not be kept is refused by itself, and the tender goes on.
    List<String> plain = cells.stream().map(PlainText::without).toList();
    String id = columns.id(plain);
    List<Problem> problems = new ArrayList<>(columns.refusals(cells));
    problems.addAll(problems(id, line.number()));
    return new TenderRow(
        line.number(), id, columns.answers(plain), columns.packageFile(plain), problems);
  }

  private List<Problem> problems(String id, long line) {
    if (id.isEmpty()) {
      return List.of(Problem.of(TenderColumns.ID, "", "each job has an id of its own"));
    }
    if (id.length() > LONGEST_ID) {
      return List.of(
          Problem.of(
              TenderColumns.ID,
              id.substring(0, LONGEST_ID) + "…",
              "at most " + LONGEST_ID + " characters"));
    }
    Long earlier = suspects.contains(id.hashCode()) ? firstLines.putIfAbsent(id, line) : null;
    return earlier == null
        ? List.of()
        : List.of(
            Problem.of(
                TenderColumns.ID, id, "each id stands once, and line " + earlier + " has it"));
  }

  @Override
  public void close() {
    stream.close();
  }
}
