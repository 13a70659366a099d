package hosewright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.run.CommandTrial.Ended;
import hosewright.problem.PlainText;
import java.util.List;
import java.util.SplittableRandom;

/** Characters that no door may let in, of each sort some. */
enum HiddenMarks {
  CONTROLS(List.of(0x00, 0x07, 0x08, 0x1B, 0x7F)),
  FURTHER_CONTROLS(List.of(0x80, 0x85, 0x9B, 0x9D)),
  TURNING(List.of(0x061C, 0x200F, 0x202A, 0x202E, 0x2066, 0x2069)),
  HIDING(List.of(0x00AD, 0x200B, 0x2060, 0xE0041)),
  BREAKING(List.of(0x2028, 0x2029)),
  NO_CHARACTERS(List.of(0xFFFE, 0xFFFF, 0x1FFFE));

  /** Half of a character, which no file in UTF-8 can hold. */
  static final String HALF = "\uD83D";

  @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable; no such type says so
  private final List<Integer> codePoints;

  HiddenMarks(List<Integer> codePoints) {
    this.codePoints = codePoints;
  }

  /** Every one of a sort. */
  List<String> each() {
    return codePoints.stream().map(Character::toString).toList();
  }

  /** A text with one of any sort in it. */
  static String in(String text, SplittableRandom random) {
    List<Integer> sort = values()[random.nextInt(values().length)].codePoints;
    String mark = Character.toString(sort.get(random.nextInt(sort.size())));
    int at = 1 + random.nextInt(text.length() - 1);
    return text.substring(0, at) + mark + text.substring(at);
  }

  /** Nothing is on the screen but text, and no fault of ours. */
  static void noneShown(Ended ended, long seed) {
    String shown = ended.out() + ended.err();
    assertThat(PlainText.is(shown)).as("seed %d: %s", seed, PlainText.spelt(shown)).isTrue();
    assertThat(shown).as("seed %d", seed).doesNotContain("Hosewright failed");
  }
}
