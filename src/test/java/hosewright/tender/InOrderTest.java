package hosewright.tender;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class InOrderTest {
  @Test
  void results_come_in_the_order_of_the_source_however_unevenly_the_work_takes() {
    List<Integer> got = new ArrayList<>();
    InOrder.work(
        IntStream.range(0, 1000).iterator(),
        4,
        piece -> {
          if (piece % 7 == 0) {
            Thread.yield();
          }
          return piece * 2;
        },
        got::add);
    assertThat(got).isEqualTo(IntStream.range(0, 1000).mapToObj(i -> i * 2).toList());
  }

  @Test
  void no_more_is_taken_from_the_source_than_a_few_pieces_ahead_of_what_was_handed_over() {
    AtomicInteger taken = new AtomicInteger();
    AtomicInteger handedOver = new AtomicInteger();
    AtomicInteger furthest = new AtomicInteger();
    InOrder.work(
        IntStream.range(0, 10_000).peek(i -> taken.incrementAndGet()).iterator(),
        2,
        piece -> piece,
        piece -> furthest.accumulateAndGet(taken.get() - handedOver.getAndIncrement(), Math::max));
    assertThat(handedOver).hasValue(10_000);
    assertThat(furthest.get()).isLessThanOrEqualTo(2 * 32 + 1);
  }

  @Test
  void what_the_work_throws_is_thrown() {
    assertThatThrownBy(
            () -> InOrder.work(List.of(1, 0).iterator(), 2, piece -> 1 / piece, result -> {}))
        .isInstanceOf(ArithmeticException.class);
  }
}
