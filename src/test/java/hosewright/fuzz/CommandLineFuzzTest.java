package hosewright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.AllCommands;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.shell.core.command.Command;

/** Command lines made of real commands, real options and whatever a hand may put behind them. */
final class CommandLineFuzzTest {
  private static final long SEED = 20261104;

  private static final List<String> VALUES =
      List.of(
          "2.5 NH male",
          "1.5 NH female",
          "1.5 NPT male",
          "2 cam plug",
          "100ft",
          "30 m",
          "95gpm",
          "50psi",
          "3 bar",
          "fire",
          "drinking",
          "water",
          "COUNTER",
          "HARLOW-FD",
          "Q-000001",
          "Q-000001-r1",
          "Q-999999",
          "O-000001",
          "P-000001",
          "1=2",
          "1 x Crating @ 35.00",
          "json",
          "csv",
          "a4",
          "2026-11-02",
          "2026-02-30",
          "H175-DJ-50-15NH",
          "A-25NHF-15NHM",
          "9",
          "0.5",
          "yes",
          "no",
          "NH",
          "1.75in",
          "1.99in",
          "9/in");

  @TempDir Path temporary;
  private CommandTrial shell;
  private List<ShellCommand> commands;
  private SplittableRandom random;
  private Mutation mutation;

  @BeforeEach
  void open() throws IOException {
    shell =
        CommandTrial.of(
            temporary.resolve("data"),
            trial -> {
              List<Command> all = AllCommands.of(trial);
              commands = all.stream().map(ShellCommand.class::cast).toList();
              return all;
            });
    random = new SplittableRandom(SEED);
    mutation = new Mutation(random);
    Files.createDirectory(temporary.resolve("out"));
  }

  @Test
  void a_random_command_line_is_done_or_refused_in_words() throws Exception {
    Watchdog.watch(dog -> fuzz(60, dog));
  }

  @Test
  @Tag("long")
  void a_hundred_thousand_command_lines() throws Exception {
    Watchdog.watch(dog -> fuzz(100_000, dog));
  }

  private void fuzz(int count, Watchdog dog) throws IOException {
    Set<String> here = names(Path.of(""));
    shell.run("quote", "make", "--job", "quotes/hydrant-to-nozzle.yaml", "--customer", "COUNTER");
    for (int i = 0; i < count; i++) {
      String[] words = line();
      String said = "seed %d, line %d: %s".formatted(SEED, i, List.of(words));
      Ended ended = shell.run(words);
      assertThat(ended.exitCode()).as(said + " " + ended.err()).isIn(0, 2, 3);
      assertThat(ended.out() + ended.err())
          .as(said)
          .doesNotContain("\tat ", "Exception", "Hosewright failed");
      dog.feed();
    }
    assertThat(names(Path.of(""))).as("nothing is written where nobody asked").isEqualTo(here);
    assertThat(names(temporary)).isSubsetOf("data", "out");
  }

  private String[] line() {
    ShellCommand command = commands.get(random.nextInt(commands.size()));
    List<String> words = new ArrayList<>(List.of(command.spec().name().split(" ")));
    for (int i = random.nextInt(3); i > 0 && !writesWhereTold(command); i--) {
      words.add(value());
    }
    List<OptionSpec> options = command.spec().options();
    for (int i = random.nextInt(5); i > 0 && !options.isEmpty(); i--) {
      addOption(words, options.get(random.nextInt(options.size())));
    }
    switch (random.nextInt(12)) {
      case 0 -> words.add("--" + noPath(mutation.awkward()));
      case 1 -> words.remove(random.nextInt(words.size()));
      case 2 -> words.add(random.nextInt(words.size()), noPath(mutation.awkward()));
      case 3 -> words.add("--json");
      default -> {}
    }
    return words.toArray(String[]::new);
  }

  private void addOption(List<String> words, OptionSpec option) {
    if (option.isFlag()) {
      words.add("--" + option.name());
      return;
    }
    String value = namesPlace(option) ? temporary.resolve("out").toString() : value();
    if (random.nextBoolean()) {
      words.add("--" + option.name() + "=" + value);
    } else {
      words.add("--" + option.name());
      words.add(value);
    }
  }

  private String value() {
    String value = VALUES.get(random.nextInt(VALUES.size()));
    return random.nextInt(3) == 0 ? mutation.of(value, VALUES) : value;
  }

  /** A file or folder that a user names is written where named, here or anywhere. */
  private static boolean namesPlace(OptionSpec option) {
    return option.placeholder().contains("FILE") || option.placeholder().contains("FOLDER");
  }

  private static boolean writesWhereTold(ShellCommand command) {
    return command.spec().arguments().stream().anyMatch(one -> one.placeholder().contains("FILE"));
  }

  private static String noPath(String awkward) {
    return awkward.startsWith("-") ? "" : awkward;
  }

  private static Set<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).collect(Collectors.toSet());
    }
  }
}
