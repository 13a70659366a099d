package hosewright.thread;

import hosewright.csv.CsvFile;
import hosewright.csv.CsvRow;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.NoSuchThingException;
import hosewright.problem.Problem;
import java.io.Reader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The dealer's own register of which thread each district's hydrants and hose carry.
 *
 * @param rows in the order of the file
 */
public record LocalThreads(List<LocalThread> rows) {
  public static final String FILE = "local-threads.csv";
  public static final List<String> COLUMNS =
      List.of("district", "size", "family", "checked_on", "checked_by");

  private static final int LONGEST_TEXT = 80;

  public LocalThreads {
    rows = List.copyOf(rows);
  }

  /** A register that nobody has filled in yet. */
  public static LocalThreads none() {
    return new LocalThreads(List.of());
  }

  /**
   * What one district uses at one size.
   *
   * @param end the male of it
   * @param checkedOn when somebody last made sure
   * @param checkedBy by what: a gauge, a sample, a letter
   */
  public record LocalThread(String district, End end, LocalDate checkedOn, String checkedBy) {}

  /**
   * The register out of its file.
   *
   * @throws BadInputException naming every cell that is wrong
   */
  public static LocalThreads read(Reader text) {
    List<Problem> problems = new ArrayList<>();
    CsvFile file = CsvFile.read(Map.of(FILE, text), FILE, COLUMNS, problems);
    List<LocalThread> rows = new ArrayList<>();
    for (CsvRow row : file.rows()) {
      String district = row.text("district", LONGEST_TEXT);
      Optional<End> end = end(row);
      LocalDate checkedOn = row.date("checked_on");
      String checkedBy = row.text("checked_by", LONGEST_TEXT);
      if (row.sound() && end.isPresent()) {
        rows.add(new LocalThread(district, end.get(), checkedOn, checkedBy));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return new LocalThreads(rows);
  }

  private static Optional<End> end(CsvRow row) {
    String name = row.text("family", LONGEST_TEXT);
    Optional<Family> family = Families.find(name);
    if (family.isEmpty()) {
      List<String> codes = Families.all().stream().map(Family::code).toList();
      row.refuse("family", "one of " + String.join(", ", codes), Nearest.to(name, codes));
      return Optional.empty();
    }
    Gender half = family.get().halves().genders().get(0);
    return row.parsed(
        "size",
        row.text("size", LONGEST_TEXT),
        size -> End.parse(size + " " + family.get().code() + " " + half.word()));
  }

  /** Every district, each once, in the order of the file. */
  public List<String> districts() {
    return rows.stream().map(LocalThread::district).distinct().toList();
  }

  /** What a district uses, in any case of letters; empty when it is not in the register. */
  public List<LocalThread> find(String district) {
    String wanted = plain(district);
    return rows.stream().filter(row -> plain(row.district()).equals(wanted)).toList();
  }

  /**
   * What a district uses, in any case of letters.
   *
   * @throws BadInputException with the nearest district when it is not in the register
   */
  public List<LocalThread> of(String district) {
    List<LocalThread> found = find(district);
    if (found.isEmpty()) {
      throw new NoSuchThingException(
          "district",
          district,
          districts(),
          "it is not in " + FILE + ", check with the local fire service, then add it");
    }
    return found;
  }

  private static String plain(String district) {
    return district.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }
}
