package hosewright.door.shell.command;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.screen.Screen;
import org.junit.jupiter.api.Test;

final class HelpTextTest {
  private static final CommandSpec SPEC =
      CommandSpec.of("line wash", Group.PLAN, "Washes a line", "line wash --at 60psi")
          .with(
              OptionSpec.value("at", "PRESSURE", "pressure at the nozzle").asRequired(),
              OptionSpec.value("slack", "PERCENT", "hose beyond the run").withDefault("5%"),
              OptionSpec.flag("cold", "use water as it comes, without heating it first at all"))
          .with(ArgumentSpec.optional("NUMBER", "line number"));

  @Test
  void it_shows_use_words_options_defaults_and_one_example() {
    assertThat(HelpText.of(SPEC, Screen.PIPED))
        .startsWith(
            "line wash: Washes a line.\n\nUsage: line wash [NUMBER] --at PRESSURE [options]")
        .contains(
            "  --at PRESSURE    pressure at the nozzle (required)",
            "  --slack PERCENT  hose beyond the run (default: 5%)")
        .endsWith("Example:\n  hosewright line wash --at 60psi");
  }

  @Test
  void on_a_narrow_screen_explanations_wrap_beside_their_options() {
    String text = HelpText.of(SPEC, new Screen(60, false));
    assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(60));
    assertThat(text).contains("without heating it\n                   first at all");
  }
}
