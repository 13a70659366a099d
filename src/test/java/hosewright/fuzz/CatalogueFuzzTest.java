package hosewright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.AllCommands;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Folders of catalogue files with something changed in one of them, loaded as a dealer would. */
final class CatalogueFuzzTest {
  private static final long SEED = 20261103;
  private static final List<String> FILES =
      List.of(
          "items.csv",
          "prices.csv",
          "costs.csv",
          "suppliers.csv",
          "customers.csv",
          "contract-prices.csv",
          "freight.csv",
          "dealer.csv");

  @TempDir Path temporary;

  @Test
  void a_changed_catalogue_is_sound_or_its_problems_are_named() throws Exception {
    Watchdog.watch(dog -> fuzz(15, dog));
  }

  @Test
  @Tag("long")
  void ten_thousand_changed_catalogues() throws Exception {
    Watchdog.watch(dog -> fuzz(10_000, dog));
  }

  private void fuzz(int count, Watchdog dog) throws IOException {
    CommandTrial shell = CommandTrial.of(temporary.resolve("data"), AllCommands::of);
    SplittableRandom random = new SplittableRandom(SEED);
    Mutation mutation = new Mutation(random);
    Path folder = Files.createDirectory(temporary.resolve("catalogue"));
    copyDemo(folder);
    for (int i = 0; i < count; i++) {
      String name = FILES.get(random.nextInt(FILES.size()));
      Path demo = Path.of("catalogue", name);
      String text = Files.readString(demo);
      Files.write(folder.resolve(name), changed(text, random, mutation));

      Ended ended = shell.run("catalogue", "check", folder.toString());

      assertThat(ended.exitCode())
          .as("seed %d, catalogue %d, %s: %s", SEED, i, name, ended.err())
          .isIn(0, 2);
      assertThat(ended.out() + ended.err()).doesNotContain("\tat ", "Exception");
      Files.copy(demo, folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
      dog.feed();
    }
    try (Stream<Path> kept = Files.list(temporary)) {
      assertThat(kept.map(file -> file.getFileName().toString())).isSubsetOf("catalogue", "data");
    }
  }

  private static byte[] changed(String text, SplittableRandom random, Mutation mutation) {
    List<String> rows = text.lines().toList();
    int row = random.nextInt(rows.size());
    String before = String.join("\n", rows.subList(0, row)) + "\n";
    String after = String.join("\n", rows.subList(row + 1, rows.size())) + "\n";
    String whole = before + mutation.of(rows.get(row), rows) + "\n" + after;
    byte[] bytes =
        whole.getBytes(
            switch (random.nextInt(8)) {
              case 0 -> StandardCharsets.UTF_16;
              case 1 -> StandardCharsets.ISO_8859_1;
              default -> StandardCharsets.UTF_8;
            });
    if (random.nextInt(8) == 0) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  private static void copyDemo(Path folder) throws IOException {
    for (String name : FILES) {
      Files.copy(Path.of("catalogue", name), folder.resolve(name));
    }
  }
}
