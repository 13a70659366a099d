package hosewright.door.shell.line;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.AllCommands;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a master of the trade would lay, asked as a dealer would ask. */
final class TradePracticeTest {
  @TempDir private static Path data;

  private static CommandTrial shell;

  @BeforeAll
  static void open() {
    shell = CommandTrial.of(data, AllCommands::of);
  }

  @Test
  void a_rule_that_the_buyer_lifts_is_said_with_the_plan() {
    String asked =
        "line plan --from '2.5 NH male pump' --to '1.5 NH nozzle' --use fire --length 200ft"
            + " --flow 150gpm --need 50psi --source-pressure 160psi --size 1.75in"
            + " --allow narrow-fitting";
    assertThat(run(asked).out())
        .containsPattern("The buyer\\s+allows\\s+a\\s+part\\s+narrower[^.]*\\(narrow-fitting\\)");
    assertThat(run(asked + " --json").json().get("allowed").get(0).asString())
        .isEqualTo("narrow-fitting");
  }

  @Test
  void a_rule_that_nobody_knows_or_may_lift_is_refused() {
    String asked =
        "line plan --from '2.5 NH male pump' --to '1.5 NH nozzle' --length 200ft --flow 150gpm"
            + " --need 50psi --allow ";
    Ended unknown = run(asked + "plain-why");
    assertThat(unknown.exitCode()).isEqualTo(2);
    assertThat(unknown.err()).contains("plain-why").contains("Did you mean 'plain-wye'?");
    Ended never = run(asked + "part-to-source");
    assertThat(never.exitCode()).isEqualTo(2);
    assertThat(never.err()).contains("never lifted");
  }

  /** Words as a person types them, some in quotes. */
  static Ended run(String typed) {
    List<String> words = new ArrayList<>();
    String[] parts = typed.split("'", -1);
    for (int i = 0; i < parts.length; i++) {
      if (i % 2 == 1) {
        words.add(parts[i]);
      } else {
        words.addAll(List.of(parts[i].strip().split("\\s+")));
      }
    }
    words.removeIf(String::isEmpty);
    return shell.run(words.toArray(String[]::new));
  }
}
