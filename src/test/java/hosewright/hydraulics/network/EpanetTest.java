package hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * EPANET as judge: the same random layouts, its answers and ours. Its answers to the layouts of the
 * suite are kept; src/test/epanet/README.md says how they are made anew.
 */
class EpanetTest {
  private static final Path KEPT = Path.of("src/test/resources/hosewright/hydraulics/epanet");
  private static final int IN_THE_SUITE = 66;
  private static final int ASKED_ANEW = 400;

  @Test
  void flows_and_pressures_are_those_that_epanet_gave() throws Exception {
    List<EpanetCase> cases = EpanetCase.draw(IN_THE_SUITE);
    sameLayouts(Files.readString(KEPT.resolve("layouts.inp")), layouts(cases));
    agree(cases, KEPT.resolve("answers.csv"));
  }

  @Test
  void the_layouts_have_joins_pumps_copies_and_lines_abreast() {
    List<EpanetCase> cases = EpanetCase.draw(IN_THE_SUITE);
    List<Network> networks = cases.stream().map(EpanetCase::network).toList();

    assertThat(cases)
        .filteredOn(one -> one.drawn() == RandomNetworks.Drawn.BY_COEFFICIENT)
        .hasSizeGreaterThanOrEqualTo(40);
    assertThat(networks).filteredOn(Network::joins).hasSizeGreaterThan(10);
    assertThat(networks)
        .filteredOn(network -> !network.nodes(Node.Pump.class).isEmpty())
        .hasSizeGreaterThan(10);
    assertThat(networks)
        .filteredOn(network -> network.links().stream().anyMatch(link -> link.copies() > 1))
        .hasSizeGreaterThan(5);
    assertThat(networks)
        .filteredOn(network -> network.links().stream().anyMatch(link -> link.lines() > 1))
        .hasSizeGreaterThan(5);
    assertThat(networks)
        .filteredOn(network -> network.nodes(Node.Source.class).size() > 1)
        .hasSizeGreaterThan(2);
  }

  /** Needs Node and its registry; leaves what the suite keeps in target/epanet. */
  @Test
  @Tag("long")
  void epanet_asked_anew_agrees_with_many_more() throws Exception {
    assumeTrue(runs(Path.of("."), "node", "--version"), "Node is not installed");
    Path folder = Files.createDirectories(Path.of("target/epanet").toAbsolutePath());
    assertThat(runs(folder, "npm", "install", "--no-save", "--prefix", ".", "epanet-js@0.9.0"))
        .isTrue();
    List<EpanetCase> cases = EpanetCase.draw(ASKED_ANEW);
    ask(folder, "layouts", cases.subList(0, IN_THE_SUITE));
    ask(folder, "all", cases);
    Files.move(
        folder.resolve("layouts.csv"),
        folder.resolve("answers.csv"),
        StandardCopyOption.REPLACE_EXISTING);
    agree(cases, folder.resolve("all.csv"));
  }

  private static void ask(Path folder, String name, List<EpanetCase> cases) throws Exception {
    Files.writeString(folder.resolve(name + ".inp"), layouts(cases));
    String script = Path.of("src/test/epanet/ask-epanet.mjs").toAbsolutePath().toString();
    assertThat(runs(folder, "node", script, name + ".inp", name + ".csv")).isTrue();
  }

  private static boolean runs(Path folder, String... command) throws InterruptedException {
    try {
      Process process = new ProcessBuilder(command).directory(folder.toFile()).inheritIO().start();
      return process.waitFor(5, TimeUnit.MINUTES) && process.exitValue() == 0;
    } catch (IOException e) {
      return false;
    }
  }

  private static String layouts(List<EpanetCase> cases) {
    return cases.stream()
        .map(one -> ";; " + one.name() + "\n" + one.text())
        .collect(Collectors.joining("\n"));
  }

  /** Word by word; figures may differ by what another machine rounds otherwise. */
  private static void sameLayouts(String kept, String drawn) {
    String[] keptWords = kept.split("\\s+");
    String[] words = drawn.split("\\s+");
    assertThat(words).hasSameSizeAs(keptWords);
    for (int i = 0; i < words.length; i++) {
      if (!words[i].equals(keptWords[i])) {
        assertThat(Double.parseDouble(words[i]))
            .isCloseTo(Double.parseDouble(keptWords[i]), within(0.001));
      }
    }
  }

  private static void agree(List<EpanetCase> cases, Path file) throws IOException {
    Map<String, Map<String, Double>> answers = new HashMap<>();
    for (String row : Files.readAllLines(file)) {
      String[] cells = row.split(",", -1);
      if (cells.length == 3 && !cells[0].equals("layout")) {
        answers
            .computeIfAbsent(cells[0], name -> new HashMap<>())
            .put(cells[1], Double.valueOf(cells[2]));
      }
    }
    List<String> broken = new ArrayList<>();
    int unsolved = 0;
    for (EpanetCase one : cases) {
      if (answers.get(one.name()).containsKey("unsolved")) {
        unsolved++;
        continue;
      }
      try {
        one.agreesWith(answers.get(one.name()));
      } catch (AssertionError e) {
        broken.add(e.getMessage());
      }
    }
    assertThat(broken).isEmpty();
    assertThat(unsolved).as("layouts that EPANET gave up").isLessThan(cases.size() / 40);
  }
}
