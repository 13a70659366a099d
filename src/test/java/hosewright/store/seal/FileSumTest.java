package hosewright.store.seal;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.store.seal.FileSum.State;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class FileSumTest {
  @TempDir private Path folder;
  private Path store;
  private FileSum sum;

  @BeforeEach
  void leave_a_store() throws IOException {
    store = Files.writeString(folder.resolve("store.mv.db"), "rows".repeat(100_000));
    sum = FileSum.of(store);
    sum.open();
    sum.closed();
  }

  private State found() {
    State state = sum.open();
    sum.givenUp();
    return state;
  }

  @Test
  void a_store_that_nobody_touched_reads_as_it_was_left() {
    assertThat(found()).isEqualTo(State.AS_LEFT);
  }

  @Test
  void one_bit_anywhere_is_found_and_so_is_a_file_cut_short() throws IOException {
    byte[] left = Files.readAllBytes(store);
    for (int place : new int[] {0, 77_777, left.length - 1}) {
      byte[] flipped = left.clone();
      flipped[place] ^= 1;
      Files.write(store, flipped);
      assertThat(found()).as("bit of byte %s", place).isEqualTo(State.CHANGED);
    }
    Files.write(store, Arrays.copyOf(left, left.length - 1));
    assertThat(found()).isEqualTo(State.CHANGED);
  }

  @Test
  void damage_to_the_sum_is_not_taken_for_damage_to_the_store() throws IOException {
    Path kept = folder.resolve(FileSum.NAME);
    byte[] written = Files.readAllBytes(kept);
    written[9] ^= 1;
    Files.write(kept, written);

    assertThat(found()).isEqualTo(State.UNKNOWN);
  }

  @Test
  void while_a_store_is_open_nothing_is_said_of_it_and_the_last_to_close_it_says() {
    sum.open();
    sum.forget();
    FileSum other = FileSum.of(store);
    assertThat(other.open()).isEqualTo(State.UNKNOWN);

    other.closed();
    assertThat(folder.resolve(FileSum.NAME)).doesNotExist();
    sum.closed();
    assertThat(found()).isEqualTo(State.AS_LEFT);
  }

  @Test
  void a_store_that_is_damaged_is_left_without_a_word() {
    sum.open();
    sum.forget();
    sum.givenUp();

    assertThat(found()).isEqualTo(State.UNKNOWN);
  }
}
