package hosewright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.desk.OpenDesk;
import hosewright.door.shell.AllCommands;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import hosewright.store.database.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.shell.core.command.Command;

/**
 * Characters that may not be kept, put into every line of every file that a command reads or that
 * lies in a data folder. Which options name files is asked of the commands: a new one fails here
 * until it is said what is read behind it.
 */
final class FileDoorsFuzzTest {
  private static final long SEED = 20261201;

  /** Options behind which a file is written, and its name alone is read. */
  private static final Set<String> WRITTEN = Set.of("out", "picture", "report");

  /** Words of a command that name tables or backups, which have tests of their own. */
  private static final Set<String> TABLES =
      Set.of(
          "catalogue check PLACE",
          "catalogue load PLACE",
          "fleet load PLACE",
          "fleet test PLACE",
          "tender price FILE",
          "quote answers FILE",
          "data backup FILE",
          "data restore FILE");

  @TempDir Path folder;
  private final SplittableRandom random = new SplittableRandom(SEED);
  private final List<ShellCommand> commands = new ArrayList<>();

  /** As a second window of the shop's would: to open it anew takes longer than most commands. */
  @AutoClose private Database held;

  private Path data;
  private CommandTrial shell;

  @BeforeEach
  void keep_a_quote() {
    data = folder.resolve("data");
    OpenDesk.putDemoInto(data);
    held = Database.open(data);
    shell =
        CommandTrial.of(
            data,
            trial -> {
              List<Command> all = AllCommands.of(trial);
              all.forEach(one -> commands.add((ShellCommand) one));
              return all;
            });
    Ended made =
        shell.typed("quote make --add '2 x W-HYD' --add '1 x Crating @ 35.00' --customer COUNTER");
    assertThat(made.exitCode()).as(made.err()).isZero();
  }

  /** A good text, which lines of it are read, and the command that reads it. */
  private record Read(
      String text, Predicate<String> reads, Function<String, List<String>> command) {
    static Read of(String text, Function<String, List<String>> command) {
      return new Read(text, line -> !line.isBlank() && !line.startsWith("#"), command);
    }
  }

  @Test
  void every_line_of_every_file_behind_an_option_refuses_them() throws IOException {
    Map<String, Read> read = read();
    Set<String> met = new TreeSet<>();
    for (ShellCommand command : commands) {
      String name = command.spec().name();
      for (OptionSpec option : command.spec().options()) {
        if (namesFiles(option.candidates()) && !WRITTEN.contains(option.name())) {
          String door = name + " --" + option.name();
          String known = read.containsKey(door) ? door : "--" + option.name();
          assertThat(read).as("say what is read behind %s", door).containsKey(known);
          if (met.add(known)) {
            tryEveryLine(read.get(known));
          }
        }
      }
      for (ArgumentSpec argument : command.spec().arguments()) {
        if (namesFiles(argument.candidates())) {
          assertThat(TABLES).as("say what is read").contains(name + " " + argument.placeholder());
        }
      }
    }
    assertThat(met).as("what is read").isEqualTo(read.keySet());
  }

  @Test
  void every_line_of_what_lies_in_a_data_folder_refuses_them_or_is_not_shown() throws IOException {
    Files.createDirectories(data.resolve("kits"));
    Map<String, List<String>> beside = new LinkedHashMap<>();
    beside.put("kits/hand-line.txt", List.of("kit", "show"));
    beside.put(
        "terms.txt", List.of("quote", "make", "--add", "1 x W-HYD", "--customer", "COUNTER"));
    for (Map.Entry<String, List<String>> file : beside.entrySet()) {
      Path at = data.resolve(file.getKey());
      Files.writeString(at, HiddenMarks.in("2 x W-HYD", random) + "\n");
      refused(shell.run(file.getValue().toArray(String[]::new)));
      Files.delete(at);
    }
    Files.writeString(
        data.resolve("short-forms.txt"),
        HiddenMarks.in("yard", random)
            + " = line plan\nyard = line plan --to "
            + HiddenMarks.in("2 NPT female", random)
            + "\n");
    for (List<String> words : List.of(List.of("help"), List.of("yard"), List.of("version"))) {
      HiddenMarks.noneShown(shell.run(words.toArray(String[]::new)), SEED);
    }
  }

  private Map<String, Read> read() throws IOException {
    Map<String, Read> read = new LinkedHashMap<>();
    Path sheet = folder.resolve("sheet.txt");
    assertThat(shell.run("quote", "edit", "1", "--out", sheet.toString()).exitCode()).isZero();
    String job = Files.readString(Path.of("quotes/layouts/unlike-hand-lines.yaml"));
    read.put("--job", all(job, file -> List.of("line", "plan", "--job", file)));
    read.put(
        "--package",
        all(
            Files.readString(Path.of("quotes/packages/fit-out.yaml")),
            file -> List.of("quote", "make", "--package", file)));
    String parts = "2 x W-HYD\n# ours\n1 x Crating @ 35.00\n";
    read.put(
        "quote make --parts",
        Read.of(parts, file -> List.of("quote", "make", "--parts", file, "--customer", "COUNTER")));
    read.put(
        "kit add --parts", Read.of(parts, file -> List.of("kit", "add", "new", "--parts", file)));
    String sentences = "Goods stay ours until paid.\n# ours\nCall before you come.\n";
    read.put("--notes", Read.of(sentences, file -> revising("--notes", file)));
    read.put("--terms", Read.of(sentences, file -> revising("--terms", file)));
    read.put(
        "--sheet",
        Read.of(
            Files.readString(sheet)
                    .replace("reason:\n", "reason: more\n")
                    .replace("1 | 2 |", "== Wrenches\n1 | 3 |")
                + "note: call first\n-- soon\n+ | 1 | 9.00 | Labels\n",
            file -> List.of("quote", "edit", "1", "--sheet", file)));
    String mapping =
        "items:\n  file: items.csv\n  columns:\n    number: number\n"
            + "    kind: {column: kind, words: {HOSE: hose}}\n    unit: {always: each}\n";
    read.put(
        "--mapping",
        all(mapping, file -> List.of("catalogue", "check", "catalogue", "--mapping", file)));
    read.put(
        "--mapping",
        all(
            "inventory:\n  file: inventory.csv\n  columns:\n    id: id\n",
            file -> List.of("fleet", "load", "catalogue/fleet", "--mapping", file)));
    return read;
  }

  /** A text whose comments are read too, since they may be kept. */
  private static Read all(String text, Function<String, List<String>> command) {
    return new Read(text, line -> !line.isBlank(), command);
  }

  private static List<String> revising(String option, String file) {
    return List.of("quote", "revise", "1", option, file, "--reason", "so they asked");
  }

  private void tryEveryLine(Read read) throws IOException {
    List<String> lines = read.text().lines().toList();
    Path file = folder.resolve("marked");
    for (int i = 0; i < lines.size(); i++) {
      if (read.reads().test(lines.get(i)) && lines.get(i).length() > 1) {
        List<String> marked = new ArrayList<>(lines);
        marked.set(i, HiddenMarks.in(lines.get(i), random));
        Files.writeString(file, String.join("\n", marked) + "\n");
        Ended ended = shell.run(read.command().apply(file.toString()).toArray(String[]::new));
        refused(ended);
        assertThat(ended.err())
            .as("line %d of %s", i + 1, read.text())
            .containsPattern("line " + (i + 1) + "\\b");
      }
    }
  }

  /** Whether files are offered on the tab key. */
  private static boolean namesFiles(Function<String, List<String>> candidates) {
    try {
      return candidates.apply("pom").contains("pom.xml");
    } catch (RuntimeException e) {
      return false;
    }
  }

  private static void refused(Ended ended) {
    HiddenMarks.noneShown(ended, SEED);
    assertThat(ended.exitCode()).as("seed %d: %s", SEED, ended.err()).isEqualTo(2);
    assertThat(ended.err()).as("seed %d", SEED).contains("{U+");
  }
}
