package hosewright.intake;

import hosewright.csv.TableForm;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Reads how a dealer's own columns become ours, from a YAML file the dealer keeps. */
final class MappingFile {
  private static final int MOST_BYTES = 256 * 1024;
  private static final List<String> TABLE_WORDS =
      List.of("file", "sheet", "header-line", "separator", "encoding", "decimal-comma", "columns");
  private static final List<String> COLUMN_WORDS =
      List.of("column", "columns", "join", "words", "unit", "always", "dates");
  private static final Map<String, Character> SEPARATORS =
      Map.of("comma", ',', "semicolon", ';', "tab", '\t', ",", ',', ";", ';');
  private static final Map<String, Charset> ENCODINGS =
      Map.of("UTF-8", StandardCharsets.UTF_8, "windows-1252", Charset.forName("windows-1252"));

  private final List<TableForm> forms;
  private final List<Problem> problems = new ArrayList<>();

  private MappingFile(List<TableForm> forms) {
    this.forms = forms;
  }

  /**
   * What the file says: our table's name to its mapping, or to nothing for a table that is to be
   * empty. Tables it does not name are read in our own form.
   *
   * @throws BadInputException with every problem found
   */
  static Map<String, Optional<TableMapping>> read(Path file, List<TableForm> forms) {
    try {
      Optional<String> text =
          Files.isRegularFile(file) ? SmallFile.text(file, MOST_BYTES) : Optional.empty();
      if (text.isEmpty()) {
        throw new BadInputException("mapping", file.toString(), "a mapping file, such as map.yaml");
      }
      return new MappingFile(forms).tables(text.get(), file.getFileName().toString());
    } catch (IOException e) {
      throw new BadInputException("mapping", file.toString(), "a readable mapping file in UTF-8");
    }
  }

  private Map<String, Optional<TableMapping>> tables(String text, String title) {
    YamlTree root = YamlTree.of(text, title, problems);
    Map<String, Optional<TableMapping>> tables = new LinkedHashMap<>();
    Map<String, YamlTree> entries = root.entries(forms.stream().map(TableForm::word).toList());
    for (TableForm form : forms) {
      YamlTree entry = entries.get(form.word());
      if (entry != null) {
        boolean none = entry.shown().equals("none");
        tables.put(form.name(), none ? Optional.empty() : Optional.of(table(form, entry)));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return tables;
  }

  private TableMapping table(TableForm form, YamlTree entry) {
    Map<String, YamlTree> said = entry.entries(TABLE_WORDS);
    Optional<String> file = text(said, "file");
    if (file.isEmpty()) {
      entry.refuse(form.word(), "say which file it is in, or 'none' when there is none", "");
    }
    return new TableMapping(
        file.orElse(""),
        text(said, "sheet"),
        chosen(said, "header-line", MappingFile::line).orElse(1),
        chosen(said, "separator", word -> choice(word, SEPARATORS)).orElse(','),
        chosen(said, "encoding", word -> choice(word, ENCODINGS)).orElse(TableMapping.USUAL),
        chosen(said, "decimal-comma", word -> choice(word, Map.of("yes", true, "no", false)))
            .orElse(false),
        columns(form, entry, said.get("columns")));
  }

  private Map<String, ColumnSource> columns(TableForm form, YamlTree entry, YamlTree said) {
    Map<String, ColumnSource> columns = new LinkedHashMap<>();
    Map<String, YamlTree> named = said == null ? Map.of() : said.entries(form.columns());
    named.forEach((column, source) -> columns.put(column, source(column, source)));
    for (String column : form.required()) {
      if (!named.containsKey(column)) {
        (said == null ? entry : said)
            .refuse(
                form.word(),
                "it must say where " + column + " comes from: a column, or 'always' a value",
                "");
      }
    }
    return columns;
  }

  private ColumnSource source(String column, YamlTree entry) {
    if (!entry.isMapping()) {
      return ColumnSource.of(entry.text().orElse(""));
    }
    Map<String, YamlTree> said = entry.entries(COLUMN_WORDS);
    List<String> theirs = new ArrayList<>();
    for (String word : List.of("column", "columns")) {
      Optional.ofNullable(said.get(word)).ifPresent(list -> theirs.addAll(list.texts()));
    }
    Optional<String> always = text(said, "always");
    if (theirs.isEmpty() == always.isEmpty()) {
      entry.refuse(column, "either a column of the dealer's, or 'always' and a value", "");
    }
    Map<String, String> words = new HashMap<>();
    Optional.ofNullable(said.get("words"))
        .map(YamlTree::all)
        .orElse(Map.of())
        .forEach((their, our) -> words.put(their.strip(), our.node() == null ? "" : our.shown()));
    return new ColumnSource(
        theirs,
        text(said, "join").orElse(column.equals("ends") ? " x " : " "),
        words,
        chosen(said, "unit", label -> ColumnUnit.of(column, label)),
        always,
        chosen(said, "dates", DateOrder::of));
  }

  private static Optional<String> text(Map<String, YamlTree> said, String word) {
    return Optional.ofNullable(said.get(word)).flatMap(YamlTree::text);
  }

  /** What a reader makes of a value; what it refuses is noted with its line. */
  private static <T> Optional<T> chosen(
      Map<String, YamlTree> said, String word, Function<String, T> reader) {
    Optional<String> text = text(said, word);
    try {
      return text.map(reader);
    } catch (BadInputException e) {
      Problem why = e.problems().get(0);
      said.get(word).refuse(text.orElse(""), word + ": " + why.allowed(), why.nearest());
      return Optional.empty();
    }
  }

  private static Integer line(String text) {
    if (!text.matches("[1-9][0-9]{0,3}")) {
      throw new BadInputException("header-line", text, "a line number from 1 to 9999");
    }
    return Integer.valueOf(text);
  }

  private static <T> T choice(String word, Map<String, T> allowed) {
    return Optional.ofNullable(allowed.get(word))
        .orElseThrow(
            () ->
                new BadInputException(
                    List.of(
                        new Problem(
                            "",
                            word,
                            "one of "
                                + String.join(", ", allowed.keySet().stream().sorted().toList()),
                            Nearest.to(word, allowed.keySet())))));
  }
}
