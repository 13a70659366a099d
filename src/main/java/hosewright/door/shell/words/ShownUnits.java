package hosewright.door.shell.words;

import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.measure.UnitSystem;

/** The option that says in which units a person reads an answer; documents keep US units. */
public final class ShownUnits {
  public static final String NAME = "units";

  private ShownUnits() {}

  public static OptionSpec option() {
    return OptionSpec.value(NAME, "us|si", "units of the text: psi, gpm, ft or bar, L/min, m")
        .completing("us", "si")
        .withDefault("us");
  }

  /**
   * The system asked for.
   *
   * @throws hosewright.problem.BadInputException for any but us and si
   */
  public static UnitSystem of(Invocation in) {
    return UnitSystem.read(NAME, in.value(NAME).orElse("us"));
  }
}
