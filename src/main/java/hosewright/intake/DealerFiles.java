package hosewright.intake;

import hosewright.csv.CellRows;
import hosewright.csv.CsvText;
import hosewright.csv.TableForm;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Finds our tables in what a dealer hands over: a folder of text files and workbooks, or one
 * workbook with a sheet for each table.
 */
public final class DealerFiles {
  private static final String NO_FILE = "a file that may be read, and no folder, pipe or device";

  private final Path place;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, CellRows> tables = new LinkedHashMap<>();

  private DealerFiles(Path place) {
    this.place = place;
  }

  /**
   * The tables there.
   *
   * @param place folder or workbook
   * @param mapping file that maps the dealer's columns to ours
   * @param required tables that must be there
   * @param optional tables that may be there
   * @return by name, such as {@code items.csv}; the files are opened only when read
   * @throws BadInputException naming every table that is missing or there twice
   */
  public static Map<String, CellRows> open(
      Path place, Optional<Path> mapping, List<TableForm> required, List<TableForm> optional) {
    DealerFiles files = new DealerFiles(place);
    List<TableForm> all = new ArrayList<>(required);
    all.addAll(optional);
    Map<String, Optional<TableMapping>> mapped =
        mapping.map(file -> MappingFile.read(file, all)).orElse(Map.of());
    if (!Files.isDirectory(place) && !isWorkbook(place)) {
      throw new BadInputException(
          "folder",
          place.toString(),
          "a folder with items.csv, prices.csv and so on, or a workbook with sheets of such names");
    }
    for (TableForm form : all) {
      if (mapped.containsKey(form.name())) {
        files.addMapped(form, mapped.get(form.name()));
      } else {
        files.addOwn(form, required.contains(form));
      }
    }
    if (!files.problems.isEmpty()) {
      throw new BadInputException(files.problems);
    }
    return files.tables;
  }

  private void addMapped(TableForm form, Optional<TableMapping> mapping) {
    if (mapping.isEmpty()) {
      tables.put(form.name(), new NoRows(form));
      return;
    }
    TableMapping how = mapping.get();
    Optional<Path> file = file(how.file());
    if (file.isEmpty() || !isFileToRead(file.get())) {
      problems.add(
          Problem.of(
              "mapping file of " + form.word(), how.file(), "a readable file in " + folder()));
      return;
    }
    boolean workbook = isWorkbook(file.get());
    CellRows theirs =
        workbook
            ? new XlsxRows(file.get(), how.sheet())
            : new TextFile(file.get(), how.separator(), how.encoding());
    tables.put(form.name(), new MappedRows(theirs, form, how, workbook));
  }

  private void addOwn(TableForm form, boolean required) {
    List<CellRows> found = new ArrayList<>();
    if (Files.isDirectory(place)) {
      Path text = place.resolve(form.name());
      Path workbook = place.resolve(form.word() + ".xlsx");
      if (isThere(text)) {
        found.add(new TextFile(text, ',', TableMapping.USUAL));
      }
      if (isThere(workbook)) {
        found.add(new XlsxRows(workbook, Optional.empty()));
      }
    } else if (sheets().contains(form.word())) {
      found.add(new XlsxRows(place, Optional.of(form.word())));
    }
    if (found.size() > 1) {
      String both = form.word() + ".csv and " + form.word() + ".xlsx";
      problems.add(Problem.of("folder", place.toString(), "only one of " + both));
    } else if (found.isEmpty() && required) {
      problems.add(missing(form));
    }
    found.forEach(rows -> tables.put(form.name(), rows));
  }

  /** Whether a file is there; what is there under its name and is none is noted. */
  private boolean isThere(Path file) {
    boolean there = Files.exists(file);
    if (there && !isFileToRead(file)) {
      problems.add(Problem.of("file", file.toString(), NO_FILE));
    }
    return there;
  }

  /** Folders, pipes and devices have readers too, and no end that is sure to come. */
  private static boolean isFileToRead(Path file) {
    return Files.isRegularFile(file) && Files.isReadable(file);
  }

  /** A file as text, unless its name says that it is a workbook. */
  static Optional<CellRows> anyText(Path file) {
    if (!isFileToRead(file)) {
      throw new BadInputException("file", file.toString(), NO_FILE);
    }
    return isWorkbook(file)
        ? Optional.empty()
        : Optional.of(new TextFile(file, ',', TableMapping.USUAL));
  }

  private Problem missing(TableForm form) {
    return Files.isDirectory(place)
        ? Problem.of("folder", place.toString(), "a folder that has a readable " + form.name())
        : Problem.of("workbook", place.toString(), "a workbook that has a sheet " + form.word());
  }

  private List<String> sheets;

  private List<String> sheets() {
    if (sheets == null) {
      sheets = XlsxRows.sheets(place).stream().map(s -> s.toLowerCase(Locale.ROOT)).toList();
    }
    return sheets;
  }

  /** A file beside or in what was given. */
  private Optional<Path> file(String name) {
    try {
      return Optional.of(folder().resolve(name));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private Path folder() {
    return Files.isDirectory(place)
        ? place
        : Optional.ofNullable(place.toAbsolutePath().getParent()).orElse(place);
  }

  private static boolean isWorkbook(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    return Files.isRegularFile(file) && name.endsWith(".xlsx");
  }

  /** A table that the dealer does not have. */
  private record NoRows(TableForm form) implements CellRows {
    @Override
    public String title() {
      return form.name();
    }

    @Override
    public void each(Taker taker) {
      taker.take(Row.of(1, form.columns()));
    }
  }

  /** A text file that is opened when it is read. */
  private record TextFile(Path file, char separator, Charset encoding) implements CellRows {
    @Override
    public String title() {
      return file.getFileName().toString();
    }

    @Override
    public void each(Taker taker) {
      // Malformed text must be refused, never replaced, or prices could change unseen.
      try (Reader text =
          new BufferedReader(
              new InputStreamReader(
                  Files.newInputStream(file),
                  encoding
                      .newDecoder()
                      .onMalformedInput(CodingErrorAction.REPORT)
                      .onUnmappableCharacter(CodingErrorAction.REPORT)))) {
        new CsvText(title(), text, separator).each(taker);
      } catch (IOException e) {
        throw new BadInputException("file", file.toString(), NO_FILE);
      }
    }
  }
}
