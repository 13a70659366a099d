package hosewright.door.shell.line;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.DemoBooks;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Questions as a dealer types them, whose answer a master of the trade would not accept before. */
final class AtTheCounterTest {
  /** One set of books for all: questions do not change them. */
  @TempDir private static Path data;

  private CommandTrial shell;

  @BeforeEach
  void open() {
    shell = CommandTrial.of(data, trial -> List.of(new LinePlanCommand(DemoBooks.of(trial))));
  }

  private Ended plan(String options) {
    return shell.run(words("line plan " + options));
  }

  private JsonNode planJson(String options) {
    return shell.run(words("line plan " + options + " --json")).json();
  }

  /** What is typed, apart at blanks but for what stands between single quote marks. */
  private static String[] words(String typed) {
    return Pattern.compile("'([^']*)'|(\\S+)")
        .matcher(typed)
        .results()
        .map(found -> found.group(1) == null ? found.group(2) : found.group(1))
        .toArray(String[]::new);
  }

  @Test
  void a_tip_that_contradicts_flow_and_need_is_refused_with_both_readings() {
    Ended ended =
        plan(
            "--from '2.5 NH male pump' --to '1.5 NH nozzle' --length 150ft --size 1.75in --tip"
                + " 15/16in --flow 95gpm --need 75psi --source-pressure 120psi");

    // Q = 29.7 d² √p (City of Rohnert Park training slides): 29.7 x 0.9375² x √75 = 226.1 gpm;
    // (95/(29.7 x 0.9375²))² = 13.24 psi; √(95/(29.7 x √75)) = 0.608 in.
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err())
        .contains("tip cannot be '15/16in'")
        .contains("flow and need")
        .contains("flows 226 gpm at the 75.0 psi of need")
        .contains("takes 13.2 psi for the 95 gpm of flow")
        .contains("0.61 in");
  }

  @Test
  void a_total_without_two_parts_says_so_wherever_it_stands() {
    String asked =
        "--from '3 cam plug pump' --to '2.5 NH female nozzle' --length 200ft --flow 300gpm"
            + " --need 50psi --source-pressure 120psi --accessories V-CHECK-2NPT";
    assertThat(flat(plan(asked).out()))
        .containsPattern("This line does it: .* for [0-9.]+ USD and 2 parts without price\\.")
        .containsPattern("Total [0-9.]+ USD and 2 parts without price before freight and tax\\.");
    JsonNode document = planJson(asked);
    assertThat(document.get("unpriced")).hasSize(2);
    assertThat(document.get("headline").asString())
        .isEqualTo(document.get("total").asString() + " and 2 parts without price");
  }

  private static String flat(String wrapped) {
    return wrapped.replaceAll("\\s+", " ");
  }
}
