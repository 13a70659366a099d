package hosewright.door.shell.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.problem.BadInputException;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class WordsTest {

  @Test
  void spaces_part_words() {
    assertThat(Words.of("  line   plan\t--size 2.5in "))
        .containsExactly("line", "plan", "--size", "2.5in");
    assertThat(Words.of(" ")).isEmpty();
  }

  @Test
  void quotes_keep_a_value_whole_at_the_start_of_a_word_and_after_an_equals_sign() {
    assertThat(Words.of("--from \"2.5 NH male\" --to='1.5 NH female'"))
        .containsExactly("--from", "2.5 NH male", "--to=1.5 NH female");
    assertThat(Words.of("\"\"")).containsExactly("");
  }

  @Test
  void an_inch_mark_is_a_letter() {
    assertThat(Words.of("--size 2.5\" --od 1-1/2\""))
        .containsExactly("--size", "2.5\"", "--od", "1-1/2\"");
    assertThat(Words.of("'2.5\" NH male'")).containsExactly("2.5\" NH male");
    assertThat(Words.of("\"2.5\"x NH\"")).containsExactly("2.5\"x NH");
  }

  @Test
  void slashes_and_backslashes_are_letters() {
    assertThat(Words.of("// C:\\jobs\\one http://x"))
        .containsExactly("//", "C:\\jobs\\one", "http://x");
  }

  @Test
  void an_open_quote_is_refused_with_what_closes_it() {
    assertThatThrownBy(() -> Words.of("--from \"2.5 NH"))
        .isInstanceOf(BadInputException.class)
        .hasMessage("quoted value cannot be '\"2.5 NH': close it with \" before a space.");
  }

  @Test
  void words_that_are_quoted_come_back_as_they_were() {
    long seed = 20261125;
    RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    for (int i = 0; i < 2_000; i++) {
      List<String> words = Stream.generate(() -> word(random)).limit(random.nextInt(1, 5)).toList();
      String line = words.stream().map(Words::quoted).collect(Collectors.joining(" "));
      assertThat(Words.of(line)).as("seed %d, case %d: %s", seed, i, line).isEqualTo(words);
    }
  }

  // One kind of quote mark a word: a word with both kinds and a space cannot be written.
  private static String word(RandomGenerator random) {
    String letters = random.nextBoolean() ? "ab 2./\\-=\"" : "ab 2./\\-='";
    return random
        .ints(random.nextInt(0, 8), 0, letters.length())
        .mapToObj(i -> letters.substring(i, i + 1))
        .collect(Collectors.joining());
  }
}
