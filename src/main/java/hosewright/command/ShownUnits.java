package hosewright.command;

import hosewright.measure.UnitSystem;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;

/** The option that says in which units a person reads an answer; documents keep US units. */
final class ShownUnits {
  static final String NAME = "units";

  private ShownUnits() {}

  static OptionSpec option() {
    return OptionSpec.value(NAME, "us|si", "units of the text: psi, gpm, ft or bar, L/min, m")
        .completing("us", "si")
        .withDefault("us");
  }

  /**
   * The system asked for.
   *
   * @throws hosewright.problem.BadInputException for any but us and si
   */
  static UnitSystem of(Invocation in) {
    return UnitSystem.read(NAME, in.value(NAME).orElse("us"));
  }
}
