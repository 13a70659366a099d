package hosewright.door.shell.line;

import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.words.Prose;
import hosewright.hydraulics.working.Working;
import hosewright.measure.UnitSystem;
import java.util.List;

/** The working of an answer, formula by formula, as an engineer writes a check by hand. */
final class WorkingText {
  static final String NAME = "working";

  private WorkingText() {}

  static OptionSpec option() {
    return OptionSpec.flag(NAME, "show each formula with its numbers put in, and its source");
  }

  static String of(List<Working.Step> steps, Screen screen, UnitSystem units) {
    if (steps.isEmpty()) {
      return "";
    }
    Prose prose = new Prose(screen);
    prose.line("");
    prose.line(
        "Working: Q in gpm, L and h in ft, d in inches, p in psi, v in ft/s, C in psi per 100 ft"
            + " at 100 gpm"
            + (units == UnitSystem.US
                ? "."
                : "; the formulas are taught in US units, so the numbers stay in them."));
    int number = 1;
    for (Working.Step step : steps) {
      prose.line("  ", number++ + ". " + step.what() + ": " + step.formula());
      prose.line("     ", "= " + step.numbers());
      prose.line("     ", "= " + result(step, units) + "   [" + step.source() + "]");
    }
    return prose.toString();
  }

  private static String result(Working.Step step, UnitSystem units) {
    String us = step.rounded() + " " + step.unit();
    return units == UnitSystem.US
        ? us
        : units.scale(step.unit()).map(s -> us + " (" + s.of(step.result()) + ")").orElse(us);
  }
}
