package hosewright.door.shell.end;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

final class EndIdentifyCommandTest {
  @TempDir private Path data;
  private CommandTrial shell;

  @BeforeEach
  void open() {
    shell = CommandTrial.of(data, trial -> List.of(new EndIdentifyCommand()));
  }

  @Test
  void scripts_find_the_names_they_rely_on() {
    // 1.5-9 NH: major 1.9900. Machinery's Handbook 27 p.1875-1876 (NFPA 1963-1993).
    JsonNode found = run("--od", "1.99in", "--tpi", "9", "--json").json();

    assertThat(found.propertyNames()).contains("candidates", "noneOfThese", "ask", "notes");
    JsonNode first = found.get("candidates").get(0);
    assertThat(first.propertyNames())
        .containsExactly("end", "majorDiameterIn", "differenceIn", "threadsPerInch", "likelihood");
    assertThat(first.get("end").asString()).isEqualTo("1.5 NH male");
    assertThat(first.get("majorDiameterIn").asDouble()).isEqualTo(1.99);
    assertThat(first.get("differenceIn").asDouble()).isZero();
    assertThat(first.get("threadsPerInch").asDouble()).isEqualTo(9);
    double shares = found.get("noneOfThese").asDouble();
    for (JsonNode candidate : found.get("candidates")) {
      shares += candidate.get("likelihood").asDouble();
    }
    assertThat(shares).isCloseTo(1, within(1e-9));
  }

  @Test
  void every_way_of_writing_the_same_reading_says_the_same() {
    String decimal = first("--od", "1.875in", "--tpi", "11.5");
    assertThat(first("--od", "1-7/8in", "--tpi", "11-1/2")).isEqualTo(decimal);
    assertThat(first("--od", "47.625mm", "--tpi", "11.5 tpi")).isEqualTo(decimal);
    assertThat(first("--od", "4.7625 cm", "--pitch", "2.2087mm")).isEqualTo(decimal);
    // A strip is never taken to be better than a caliper, nor here worse.
    assertThat(first("--wrap", 1.875 * Math.PI + "in", "--tpi", "11.5")).isEqualTo(decimal);
  }

  @Test
  void a_person_is_told_of_the_trap_and_of_the_next_question() {
    String text = run("--od", "1.99in").out();

    assertThat(text)
        .contains("1.5 NH male")
        .containsPattern("close to 2 in, but sizes are nominal:\\s+order it as 1.5")
        .contains("Next: Count the threads in one inch");
    assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
  }

  @Test
  void what_is_seen_besides_decides_between_pipe_threads() {
    // NPSH 1.5 measures 1.8788 and NPT 1.5 1.900, both 11.5 to the inch: ASME B1.20.7, B1.20.1.
    assertThat(first("--od", "1.89in", "--tpi", "11.5", "--taper", "straight"))
        .isEqualTo("1.5 NPSH male");
    assertThat(first("--od", "1.89in", "--tpi", "11.5", "--taper", "tapered"))
        .isEqualTo("1.5 NPT male");
    assertThat(first("--od", "1.89in", "--tpi", "11.5", "--stencil", "1-1/2 NPT"))
        .isEqualTo("1.5 NPT male");
  }

  @Test
  void a_poorer_reading_leaves_more_in_doubt() {
    assertThat(likelihood("--od", "1.99in", "--error", "0.06in"))
        .isLessThan(likelihood("--od", "1.99in", "--error", "0.005in"));
  }

  @Test
  void a_female_is_refused_with_the_way_out() {
    Ended ended = run("--od", "2.4in", "--gender", "female");

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("measure the male that fits it").contains("read the stencil");
    assertThat(ended.out()).isEmpty();
  }

  @Test
  void all_that_is_wrong_is_said_at_once_with_the_nearest_right_thing() {
    Ended ended =
        run(
            "--od",
            "1.99",
            "--tpi",
            "9 mm",
            "--pitch",
            "2.8 psi",
            "--taper",
            "taperd",
            "--gender",
            "femal",
            "--error",
            "1 ft",
            "--json");

    assertThat(ended.exitCode()).isEqualTo(2);
    Stream<JsonNode> problems = ended.json().get("error").get("problems").valueStream();
    assertThat(problems)
        .extracting(p -> p.get("field").asString() + " -> " + p.get("nearest").asString())
        .containsExactly(
            "od -> 1.99 in",
            "tpi -> ",
            "pitch -> ",
            "pitch -> ",
            "taper -> tapered",
            "error -> ",
            "gender -> ");
  }

  @Test
  void one_reading_is_needed_and_only_one() {
    assertThat(run().err()).contains("od is missing");
    assertThat(run("--od", "2in", "--wrap", "6in").err()).contains("not both");
    assertThat(run("--od", "40in").err()).contains("from 0.25 to 12.0 in over a male thread");
  }

  private String first(String... words) {
    return run(withJson(words)).json().get("candidates").get(0).get("end").asString();
  }

  private double likelihood(String... words) {
    return run(withJson(words)).json().get("candidates").get(0).get("likelihood").asDouble();
  }

  private static String[] withJson(String... words) {
    return Stream.concat(Stream.of(words), Stream.of("--json")).toArray(String[]::new);
  }

  private Ended run(String... words) {
    return shell.run(
        Stream.concat(Stream.of("end", "identify"), Stream.of(words)).toArray(String[]::new));
  }
}
