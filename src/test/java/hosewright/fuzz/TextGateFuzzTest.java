package hosewright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.csv.TableForm;
import hosewright.desk.CatalogueFolder;
import hosewright.desk.interview.Asker;
import hosewright.door.shell.AllCommands;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import hosewright.fleet.record.InventoryReader;
import hosewright.fleet.record.LimitReader;
import hosewright.fleet.record.OutletReader;
import hosewright.fleet.record.RecordReader;
import hosewright.job.question.JobField;
import hosewright.paper.quote.AskSheet;
import hosewright.problem.PlainText;
import hosewright.store.database.BooksOn;
import hosewright.store.database.PostgresCluster;
import hosewright.thread.LocalThreads;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.shell.core.command.Command;
import tools.jackson.databind.JsonNode;

/**
 * Characters that may not be kept, put into every field of every door: whatever a command, a job or
 * a table declares is tried, so that a new field is covered by itself.
 */
final class TextGateFuzzTest {
  private static final long SEED = 20261130;
  private static final String PLAIN = "Yard line";
  private static final String LINE =
      "2.5 NH male hydrant,1.5 NH female nozzle,300 ft,95 gpm,50 psi";

  @TempDir Path folder;
  private final SplittableRandom random = new SplittableRandom(SEED);

  @Test
  void every_option_and_word_of_every_command_refuses_them() {
    everyOption(1);
  }

  @Test
  @Tag("long")
  void every_option_and_word_of_every_command_refuses_them_a_hundred_times() {
    everyOption(100);
  }

  @Test
  void an_answer_with_them_is_asked_for_again() {
    for (HiddenMarks sort : HiddenMarks.values()) {
      Deque<String> said = new ArrayDeque<>();
      sort.each().forEach(mark -> said.add("2.5 NH" + mark + " male"));
      int bad = said.size();
      said.add("2.5 NH male");
      List<String> told = new ArrayList<>();
      Asker person =
          new Asker() {
            @Override
            public Optional<String> ask(String prompt, List<String> candidates) {
              return Optional.of(said.remove());
            }

            @Override
            public void say(String text) {
              told.add(text);
            }
          };

      assertThat(person.answer("from: ", List.of())).contains("2.5 NH male");
      assertThat(told).hasSize(bad).allSatisfy(text -> assertThat(PlainText.is(text)).isTrue());
    }
  }

  @Test
  void every_field_of_a_job_file_refuses_them_with_its_line() throws IOException {
    CommandTrial shell = shell(BooksOn.EMBEDDED);
    for (JobField field : JobField.values()) {
      String marked = HiddenMarks.in(PLAIN, random);
      String raw = field.word() + ": " + marked + "\n";
      String escaped =
          field.word()
              + ": \""
              + marked
                  .chars()
                  .mapToObj(unit -> unit < 0x80 && unit >= ' ' ? "" + (char) unit : escape(unit))
                  .collect(Collectors.joining())
              + "\"\n";
      for (String text :
          marked.codePoints().allMatch(Character::isBmpCodePoint)
              ? List.of(raw, escaped)
              : List.of(raw)) {
        Path job = Files.writeString(folder.resolve("job.yaml"), "# a job\n" + text);
        refused(shell.run("line", "plan", "--job", job.toString()), "job file line 2");
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void a_row_of_a_tender_is_refused_for_them_whatever_the_field_and_the_others_are_priced(
      BooksOn books) throws Exception {
    List<String> words =
        Arrays.stream(JobField.values().toArray(JobField[]::new)).map(JobField::word).toList();
    StringBuilder tender = new StringBuilder("id," + String.join(",", words) + "\n");
    List<String> fields = new ArrayList<>(List.of("id"));
    fields.addAll(words);
    tender.append(row("first", words, "none"));
    for (String field : fields) {
      tender.append(
          row(field.equals("id") ? HiddenMarks.in("an id", random) : field, words, field));
    }
    tender.append(row("last", words, "none"));
    Path file = Files.writeString(folder.resolve("jobs.csv"), tender.toString());

    Ended ended =
        shell(books)
            .run(
                "tender",
                "price",
                file.toString(),
                "--out",
                folder.toString(),
                "--quotes",
                "--customer",
                "COUNTER",
                "--json");

    HiddenMarks.noneShown(ended, SEED);
    assertThat(ended.exitCode()).as("seed %d: %s", SEED, ended.err()).isIn(0, 2);
    JsonNode answer = ended.json();
    assertThat(answer.path("feasible").asInt()).as(ended.out()).isEqualTo(2);
    assertThat(answer.path("notRead").asInt()).as(ended.out()).isEqualTo(fields.size());
    WellFormed.workbook(folder.resolve("jobs-priced.xlsx"));
  }

  @ParameterizedTest
  @EnumSource
  void every_column_of_every_table_refuses_them(BooksOn books) throws Exception {
    CommandTrial shell = shell(books);
    for (TableForm form : CatalogueFolder.FORMS) {
      Path tables = copied(Path.of("catalogue"));
      List<String> cells = marked(form.columns());
      poison(tables, form, cells, books == BooksOn.SERVER);
      Ended ended = shell.run("catalogue", "load", tables.toString(), "--all");
      refused(ended, form.columns().stream().map(" column %s"::formatted).toArray(String[]::new));
    }
    for (TableForm form :
        List.of(InventoryReader.FORM, RecordReader.FORM, OutletReader.FORM, LimitReader.FORM)) {
      Path tables = copied(Path.of("catalogue/fleet"));
      poison(tables, form, marked(form.columns()), books == BooksOn.SERVER);
      Ended ended = shell.run("fleet", "load", tables.toString(), "--all");
      refused(ended, form.columns().stream().map(" column %s"::formatted).toArray(String[]::new));
    }
  }

  @Test
  void the_register_of_local_threads_and_a_supplier_s_answer_refuse_them() throws IOException {
    CommandTrial shell = shell(BooksOn.EMBEDDED);
    Files.writeString(
        folder.resolve("data").resolve(LocalThreads.FILE),
        String.join(",", LocalThreads.COLUMNS)
            + "\n"
            + String.join(",", marked(LocalThreads.COLUMNS))
            + "\n");
    refused(
        shell.run("end", "local", "Port Harlow"),
        LocalThreads.COLUMNS.stream().map(" column %s"::formatted).toArray(String[]::new));
    Files.delete(folder.resolve("data").resolve(LocalThreads.FILE));

    shell.run("quote", "make", "--job", "quotes/hydrant-to-nozzle.yaml", "--customer", "COUNTER");
    Path sheet =
        Files.writeString(
            folder.resolve("answer.csv"),
            String.join(",", AskSheet.COLUMNS)
                + "\n"
                + String.join(",", marked(AskSheet.COLUMNS))
                + "\n");
    refused(
        shell.run("quote", "answers", "Q-000001", sheet.toString()),
        AskSheet.COLUMNS.stream().map(" column %s"::formatted).toArray(String[]::new));
  }

  private void everyOption(int times) {
    List<ShellCommand> commands = new ArrayList<>();
    CommandTrial shell =
        CommandTrial.of(
            folder.resolve("data"),
            trial -> {
              List<Command> all = AllCommands.of(trial);
              all.forEach(one -> commands.add((ShellCommand) one));
              return all;
            });
    for (int i = 0; i < times; i++) {
      for (ShellCommand command : commands) {
        List<String> name = List.of(command.spec().name().split(" "));
        for (OptionSpec option : command.spec().options()) {
          if (!option.isFlag()) {
            String value = random.nextInt(8) == 0 ? "a" + HiddenMarks.HALF : marked();
            refused(run(shell, name, "--" + option.name() + "=" + value), "--" + option.name());
          }
        }
        List<ArgumentSpec> arguments = command.spec().arguments();
        for (int at = 0; at < arguments.size(); at++) {
          String[] words = new String[at + 1];
          Arrays.fill(words, "1");
          words[at] = marked();
          refused(run(shell, name, words), arguments.get(at).placeholder());
        }
        for (String everywhere : List.of("--data", "--db")) {
          refused(run(shell, name, everywhere, marked()), everywhere);
        }
      }
    }
    assertThat(folder.resolve("data")).as("nothing is made for what is refused").doesNotExist();
  }

  private static Ended run(CommandTrial shell, List<String> name, String... more) {
    return shell.run(Stream.concat(name.stream(), Stream.of(more)).toArray(String[]::new));
  }

  private CommandTrial shell(BooksOn books) throws IOException {
    Path data = Files.createDirectories(folder.resolve("data"));
    Map<String, String> environment =
        books == BooksOn.SERVER
            ? PostgresCluster.shared().environment(BooksOn.database(data))
            : Map.of();
    return CommandTrial.of(data, environment, AllCommands::of);
  }

  private String marked() {
    return HiddenMarks.in(PLAIN, random);
  }

  private List<String> marked(List<String> columns) {
    return columns.stream().map(column -> marked()).toList();
  }

  private String row(String id, List<String> words, String marked) {
    Map<String, String> answers =
        Map.of(
            "from", "2.5 NH male hydrant",
            "to", "1.5 NH female nozzle",
            "length", "300 ft",
            "flow", "95 gpm",
            "need", "50 psi",
            "use", "fire",
            "source-pressure", "150 psi");
    return id
        + ","
        + words.stream()
            .map(word -> word.equals(marked) ? marked() : answers.getOrDefault(word, ""))
            .collect(Collectors.joining(","))
        + "\n";
  }

  /** Adds a row that is marked in every cell, as text or as a workbook. */
  private static void poison(Path tables, TableForm form, List<String> cells, boolean workbook)
      throws IOException {
    Path text = tables.resolve(form.name());
    if (!workbook) {
      String before =
          Files.exists(text) ? Files.readString(text) : String.join(",", form.columns()) + "\n";
      List<String> header = List.of(before.lines().findFirst().orElseThrow().split(","));
      List<String> ordered =
          header.stream().map(column -> cells.get(form.columns().indexOf(column))).toList();
      Files.writeString(text, before.stripTrailing() + "\n" + String.join(",", ordered) + "\n");
      return;
    }
    Files.deleteIfExists(text);
    try (XSSFWorkbook made = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(tables.resolve(form.word() + ".xlsx"))) {
      var sheet = made.createSheet(form.word());
      for (List<String> row : List.of(form.columns(), cells)) {
        var written = sheet.createRow(sheet.getPhysicalNumberOfRows());
        for (int column = 0; column < row.size(); column++) {
          written.createCell(column).setCellValue(inMarkup(row.get(column)));
        }
      }
      made.write(out);
    }
  }

  /** ECMA-376, 22.9.2.19: a character that XML cannot hold is written as {@code _xHHHH_}. */
  private static String inMarkup(String text) {
    return text.chars()
        .mapToObj(
            unit -> unit < ' ' || unit >= 0xFFFE ? "_x%04X_".formatted(unit) : "" + (char) unit)
        .collect(Collectors.joining());
  }

  private Path copied(Path from) throws IOException {
    Path to = Files.createTempDirectory(folder, "tables");
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, to.resolve(file.getFileName()));
      }
    }
    return to;
  }

  private static void refused(Ended ended, String... places) {
    HiddenMarks.noneShown(ended, SEED);
    assertThat(ended.exitCode()).as("seed %d: %s", SEED, ended.err()).isEqualTo(2);
    assertThat(ended.err()).as("seed %d", SEED).contains(places);
  }

  private static String escape(int unit) {
    return "\\u%04x".formatted(unit);
  }
}
