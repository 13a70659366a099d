package hosewright.door.shell.line;

import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Which parts of a plan are shown: a screen that answers, all, or those named. */
enum PlanSections {
  LINE,
  JOINTS,
  PRESSURES,
  CHECKS,
  GOODS,
  SIZES,
  ACCESSORIES,
  CAUTIONS;

  private static final String FULL = "full";
  private static final String SHOW = "show";

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  private static List<String> words() {
    return Arrays.stream(values()).map(PlanSections::word).toList();
  }

  /** The options of a command that shows a plan. */
  static OptionSpec[] options() {
    return new OptionSpec[] {
      OptionSpec.flag(FULL, "show all of the plan"),
      OptionSpec.value(SHOW, "PARTS", "show parts of the plan: " + String.join(", ", words()))
          .completingList(PlanSections::words)
    };
  }

  /** The names of those options, which say only how to answer. */
  static String[] names() {
    return new String[] {FULL, SHOW};
  }

  /**
   * The parts asked for; none for the answer alone.
   *
   * @throws BadInputException naming each part there is none of
   */
  static Set<PlanSections> of(Invocation in) {
    if (in.flag(FULL)) {
      return EnumSet.allOf(PlanSections.class);
    }
    Set<PlanSections> parts = EnumSet.noneOf(PlanSections.class);
    for (String word : in.value(SHOW).map(text -> text.split("[,\\s]+")).orElse(new String[0])) {
      parts.add(of(word));
    }
    return parts;
  }

  private static PlanSections of(String word) {
    return Arrays.stream(values())
        .filter(part -> part.word().equalsIgnoreCase(word))
        .findFirst()
        .orElseThrow(
            () ->
                new BadInputException(
                    List.of(
                        new Problem(
                            SHOW,
                            word,
                            "one or more of " + String.join(", ", words()),
                            Nearest.closely(word, words())))));
  }
}
