package hosewright.tender;

import hosewright.csv.ReferenceTable;
import hosewright.job.JobForm;
import hosewright.job.question.JobField;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.PlainText;
import hosewright.problem.Problem;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * What the columns of a tender file mean.
 *
 * <p>A heading is the word of a {@link JobField}, or one of the other words people write there, in
 * any case, with blanks or hyphens; a unit behind it, as in "length (ft)", is that of the bare
 * numbers below it.
 */
final class TenderColumns {
  static final String ID = "id";

  /** Names a file of several jobs that a row asks for in place of one of its own. */
  static final String PACKAGE = "package";

  /** What a column may be called besides the words of a job. */
  private static final List<String> OWN_WORDS = List.of(ID, PACKAGE);

  private static final Pattern BARE_NUMBER = Pattern.compile("[-+]?[0-9][0-9.,/ ]*");
  private static final Map<String, String> OTHER_WORDS = otherWords();

  private final List<Column> columns;

  private TenderColumns(List<Column> columns) {
    this.columns = columns;
  }

  /**
   * @param word "id", "package" or the word of a field
   * @param unit unit of bare numbers; empty when they have none
   */
  private record Column(String word, String unit) {}

  /**
   * The columns a header names.
   *
   * @throws BadInputException naming every heading that is unknown, there twice or missing
   */
  static TenderColumns of(String file, List<String> header) {
    List<Problem> problems = new ArrayList<>();
    List<Column> columns = new ArrayList<>();
    Map<String, String> seen = new HashMap<>();
    for (String heading : header) {
      Optional<Column> column = column(heading);
      if (column.isEmpty()) {
        problems.add(unknown(file, heading));
      } else {
        String earlier = seen.putIfAbsent(column.get().word(), heading);
        if (earlier != null) {
          problems.add(
              Problem.of(
                  file + " header",
                  heading,
                  "each column stands once, and '" + earlier + "' says the same"));
        }
        columns.add(column.get());
      }
    }
    for (String word : required(seen.keySet())) {
      if (!seen.containsKey(word)) {
        problems.add(Problem.of(file + " column " + word, "", "the header must name it"));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return new TenderColumns(List.copyOf(columns));
  }

  int count() {
    return columns.size();
  }

  /** The row's own name, or the empty text. */
  String id(List<String> cells) {
    return cell(ID, cells);
  }

  /** The package file the row names. */
  Optional<String> packageFile(List<String> cells) {
    return Optional.of(cell(PACKAGE, cells)).filter(name -> !name.isEmpty());
  }

  private String cell(String word, List<String> cells) {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).word().equals(word)) {
        return cells.get(i);
      }
    }
    return "";
  }

  /** Which cells have characters in them that may not be kept. */
  List<Problem> refusals(List<String> cells) {
    List<Problem> problems = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      PlainText.refusal(columns.get(i).word(), cells.get(i)).ifPresent(problems::add);
    }
    return problems;
  }

  /** What the cells answer, without the empty ones. */
  Map<JobField, String> answers(List<String> cells) {
    Map<JobField, String> answers = new TreeMap<>();
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      String cell = cells.get(i);
      if (!cell.isEmpty()) {
        boolean bare = !column.unit().isEmpty() && BARE_NUMBER.matcher(cell).matches();
        String text = bare ? cell + " " + column.unit() : cell;
        JobField.of(column.word()).ifPresent(field -> answers.put(field, text));
      }
    }
    return answers;
  }

  private static Optional<Column> column(String heading) {
    String words = words(heading);
    return word(words)
        .map(word -> new Column(word, ""))
        .or(
            () -> {
              int space = words.lastIndexOf('-');
              String unit = words.substring(space + 1);
              return space < 0
                  ? Optional.empty()
                  : word(words.substring(0, space))
                      .filter(word -> measuredIn(word, unit))
                      .map(word -> new Column(word, unit));
            });
  }

  private static Optional<String> word(String words) {
    boolean own = OWN_WORDS.contains(words) || JobField.of(words).isPresent();
    return own ? Optional.of(words) : Optional.ofNullable(OTHER_WORDS.get(words));
  }

  private static boolean measuredIn(String word, String unit) {
    return JobField.of(word)
        .filter(JobField::isMeasured)
        .filter(field -> JobForm.problemsOf(field, "1 " + unit).isEmpty())
        .isPresent();
  }

  private static String words(String heading) {
    return Normalizer.normalize(heading, Normalizer.Form.NFKC)
        .toLowerCase(Locale.ROOT)
        .replaceAll("[\\s_()\\[\\]:.,-]+", "-")
        .replaceAll("^-|-$", "");
  }

  private static Problem unknown(String file, String heading) {
    List<String> known = new ArrayList<>(JobField.words());
    known.addAll(OWN_WORDS);
    String allowed =
        "the columns are "
            + String.join(", ", OWN_WORDS)
            + ", "
            + String.join(", ", JobField.words());
    String shown = heading.isEmpty() ? "(empty)" : heading;
    String words = words(heading);
    String nearest = Nearest.to(words, known);
    int space = words.lastIndexOf('-');
    if (nearest.isEmpty() && space > 0) {
      nearest = Nearest.to(words.substring(0, space), known);
    }
    return new Problem(file + " header", shown, allowed, nearest);
  }

  /** What the header must name, since a column may say what another would. */
  private static List<String> required(Set<String> named) {
    Map<JobField, String> columns = new TreeMap<>();
    named.forEach(word -> JobField.of(word).ifPresent(field -> columns.put(field, word)));
    List<String> words = new ArrayList<>(List.of(ID));
    if (named.contains(PACKAGE)) {
      return words;
    }
    for (JobField field : JobField.values()) {
      if (field.required(columns)) {
        words.add(field.word());
      }
    }
    return words;
  }

  private static Map<String, String> otherWords() {
    Map<String, String> words = new LinkedHashMap<>();
    ReferenceTable.rows(
            "tender/columns.csv", row -> Map.entry(row.get("heading"), row.get("column")))
        .forEach(entry -> words.put(entry.getKey(), entry.getValue()));
    return words;
  }
}
