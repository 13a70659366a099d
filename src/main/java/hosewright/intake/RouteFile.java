package hosewright.intake;

import hosewright.csv.CellRows;
import hosewright.csv.CsvText;
import hosewright.job.question.JobField;
import hosewright.job.question.Route;
import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.problem.PlainText;
import hosewright.problem.Problem;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;

/**
 * A surveyed way as a CSV file: distance from the source, elevation and a note, the units named in
 * the headings, as in {@code distance (ft),elevation (ft),note}.
 *
 * <p>What is read becomes the answer itself, so that a job, and a quote made from it, needs the
 * file no more.
 */
public final class RouteFile implements CellRows.Taker {
  private static final int MOST_KIB = 256;
  private static final int MOST_PROBLEMS = 100;
  private static final String FIELD = JobField.ROUTE.word();

  private final String name;
  private final List<Problem> problems = new ArrayList<>();
  private final List<String> places = new ArrayList<>();
  private Optional<RouteColumns> columns = Optional.empty();

  private RouteFile(String name) {
    this.name = name;
  }

  /**
   * The answers, with the places of a route in the place of its file's name.
   *
   * @param beside the folder in which a name is looked for first
   * @throws BadInputException naming every row that cannot be used
   */
  public static Map<JobField, String> putInto(
      Map<JobField, String> answers, Optional<Path> beside) {
    String said = answers.getOrDefault(JobField.ROUTE, "").strip();
    if (said.isEmpty() || Route.listedIn(said)) {
      return answers;
    }
    Map<JobField, String> whole = new TreeMap<>(answers);
    whole.put(JobField.ROUTE, read(found(said, beside)));
    return whole;
  }

  /** Whether an answer names a file of this kind, and is not the way itself. */
  public static boolean isNamed(String said) {
    return said.toLowerCase(Locale.ROOT).endsWith(".csv");
  }

  private static Path found(String named, Optional<Path> beside) {
    try {
      Path file = Path.of(named);
      return beside.map(folder -> folder.resolve(file)).filter(Files::isRegularFile).orElse(file);
    } catch (InvalidPathException e) {
      throw new BadInputException(FIELD, named, "the name of a CSV file");
    }
  }

  /**
   * The places in a file, as a job lists them.
   *
   * @throws BadInputException naming every row that cannot be used
   */
  static String read(Path file) {
    RouteFile read = new RouteFile(String.valueOf(file.getFileName()));
    String text = SmallFile.named(FIELD, file, "a CSV file", MOST_KIB);
    new CsvText(read.name, new StringReader(text)).each(read);
    return read.places();
  }

  private String places() {
    if (columns.isEmpty() && problems.isEmpty()) {
      refuse(name, "", RouteColumns.ALLOWED, "");
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    String listed = String.join("; ", places);
    // Asked here, so that what is wrong between rows is said of the file.
    var unused = JobField.ROUTE.read(places.size() < 2 ? listed + ";" : listed);
    return listed;
  }

  @Override
  public boolean take(CellRows.Row row) {
    if (columns.isEmpty()) {
      columns = RouteColumns.of(name, row.cells(), problems);
      return columns.isPresent();
    }
    String at = name + " line " + row.line();
    for (String cell : row.cells()) {
      PlainText.refusal(at, cell).ifPresent(problems::add);
    }
    RouteColumns known = columns.get();
    Optional<String> along = known.distance(row.cells());
    Optional<String> height = known.elevation(row.cells());
    String note = known.note(row.cells());
    if (note.contains(";")) {
      refuse(at, note, "a note without a semicolon", note.replace(';', ','));
    }
    boolean readable =
        fits(at, along, known.distanceHeading(), Measures::distanceFt)
            & fits(at, height, known.elevationHeading(), Measures::altitudeFt);
    if (readable) {
      places.add(
          height.orElseThrow()
              + " at "
              + along.orElseThrow()
              + (note.isEmpty() ? "" : ", " + note));
    }
    return problems.size() < MOST_PROBLEMS;
  }

  /** Whether a cell can be read; why not is noted with its row. */
  private boolean fits(
      String at, Optional<String> cell, String heading, BiFunction<String, String, Double> reader) {
    if (cell.isEmpty()) {
      refuse(at, "", "every row has its " + heading, "");
      return false;
    }
    try {
      return Double.isFinite(reader.apply(at, cell.get()));
    } catch (BadInputException e) {
      problems.addAll(e.problems());
      return false;
    }
  }

  private void refuse(String at, String value, String allowed, String nearest) {
    problems.add(new Problem(at, value, allowed, nearest));
  }

  @Override
  public void refuse(Problem problem) {
    problems.add(problem);
  }
}
