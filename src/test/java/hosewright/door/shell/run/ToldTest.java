package hosewright.door.shell.run;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.problem.RefusalException.Kind;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

final class ToldTest {
  @Test
  void every_kind_of_refusal_has_its_word_and_ends_with_2() {
    assertThat(Arrays.stream(Kind.values()).collect(Collectors.toMap(kind -> kind, Told::of)))
        .isEqualTo(
            Map.of(
                Kind.BAD_INPUT, new Told("bad_input", 2),
                Kind.NO_SUCH_THING, new Told("no_such_thing", 2),
                Kind.CONFLICT, new Told("conflict", 2),
                Kind.TROUBLE, new Told("trouble", 2)));
  }

  @Test
  void what_is_our_fault_ends_with_1() {
    assertThat(Told.OUR_FAULT).isEqualTo(new Told("our_fault", 1));
  }
}
