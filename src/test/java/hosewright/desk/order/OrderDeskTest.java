package hosewright.desk.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.desk.OpenDesk;
import hosewright.desk.quote.AcceptQuote;
import hosewright.desk.quote.Changes;
import hosewright.desk.quote.LineChange;
import hosewright.desk.quote.LineChange.Kind;
import hosewright.desk.quote.QuotesAtTheDesk;
import hosewright.desk.quote.ReviseQuote;
import hosewright.order.Cancelled.Bought;
import hosewright.order.Order;
import hosewright.order.OrderBook.Over;
import hosewright.order.OrderLine;
import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An order from its quote to the lorry, as the desk leads it. */
final class OrderDeskTest {
  @TempDir private Path folder;
  private OpenDesk desk;

  @BeforeEach
  void open() {
    desk = new OpenDesk(folder.resolve("data"), "2026-11-02");
  }

  @Test
  void only_an_accepted_quote_is_ordered_and_only_once() {
    String number = QuotesAtTheDesk.issued(desk).number();
    RaiseOrder raise = new RaiseOrder(desk);

    assertThatThrownBy(() -> raise.raise(number, true, "ines"))
        .isInstanceOf(ConflictException.class);
    new AcceptQuote(desk).accept(number, Optional.of("their order 4711"), "ines");
    Order order = raise.raise(number, true, "ines").order();

    assertThat(order.number()).isEqualTo("O-000001");
    assertThat(order.timing().raisedOn()).isEqualTo(LocalDate.parse("2026-11-02"));
    assertThatThrownBy(() -> raise.raise(number, true, "ines"))
        .isInstanceOf(ConflictException.class);
    assertThat(new ListOrders(desk).list()).hasSize(1);
  }

  @Test
  void part_of_what_is_reserved_goes_first_and_all_the_rest_where_nothing_is_said() {
    Order order = ordered();
    OrderLine hose = order.lines().get(0);
    ShipGoods ship = new ShipGoods(desk);

    Order part = ship.ship("1", Optional.of(Map.of(hose.position(), 1)), "ines").order();
    assertThat(part.lines().get(0).counts().shipped()).isEqualTo(1);
    Order rest = ship.ship("1", Optional.empty(), "ines").order();

    assertThat(rest.lines()).allSatisfy(line -> assertThat(line.counts().reserved()).isZero());
    assertThat(rest.lines().get(0).counts().shipped()).isEqualTo(hose.counts().reserved());
    assertThat(new ShowStock(desk).show(Optional.empty()).balanced()).isTrue();
  }

  @Test
  void more_than_is_reserved_never_goes() {
    OrderLine hose = ordered().lines().get(0);
    Map<Integer, Integer> tooMany = Map.of(hose.position(), hose.counts().reserved() + 1);

    assertThatThrownBy(() -> new ShipGoods(desk).ship("1", Optional.of(tooMany), "ines"))
        .isInstanceOf(BadInputException.class);
    assertThat(new ShowOrder(desk).show("1").order().lines().get(0).counts().shipped()).isZero();
  }

  @Test
  void a_cancelled_order_frees_its_goods_and_is_neither_picked_nor_shipped() {
    OrderLine hose = ordered().lines().get(0);

    CancelOrder.Outcome outcome =
        new CancelOrder(desk)
            .cancel(new CancelOrder.Request("1", Bought.CLOSE, "the yard was sold", "ines"));

    assertThat(outcome.cancelled().freed())
        .containsEntry(hose.ware().stockCode(), hose.counts().reserved());
    assertThat(outcome.waiting()).isEmpty();
    assertThatThrownBy(() -> new PickOrder(desk).pick("1"))
        .isInstanceOf(ConflictException.class)
        .hasMessageContaining("is cancelled");
    assertThatThrownBy(() -> new ShipGoods(desk).ship("1", Optional.empty(), "ines"))
        .isInstanceOf(ConflictException.class);
    assertThat(
            new ShowStock(desk)
                .show(Optional.of(hose.ware().stockCode().toLowerCase(Locale.ROOT)))
                .shelves())
        .singleElement()
        .satisfies(shelf -> assertThat(shelf.reserved()).isZero());
  }

  @Test
  void goods_short_on_the_shelf_are_listed_and_overdue_once_their_day_has_passed() {
    QuotesAtTheDesk.draft(desk);
    new ReviseQuote(desk)
        .revise(
            new ReviseQuote.Request(
                "1",
                "a whole street",
                Map.of(),
                new Changes(
                    List.of(new LineChange(Kind.QUANTITY, "1=500")),
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    Optional.empty()),
                "ines"));
    QuotesAtTheDesk.issue(desk, "1");
    new AcceptQuote(desk).accept("1", Optional.empty(), "ines");
    Order order = new RaiseOrder(desk).raise("1", true, "ines").order();
    LocalDate expected = order.purchases().get(0).expectedOn();
    ListShortages shortages = new ListShortages(desk);

    desk.on(expected.toString());
    assertThat(shortages.list())
        .singleElement()
        .satisfies(
            line -> {
              assertThat(line.awaited().purchase()).contains("P-000001");
              assertThat(line.awaited().expectedOn()).contains(expected);
              assertThat(line.awaited().overdue()).isFalse();
            });
    desk.on(expected.plusDays(1).toString());
    assertThat(shortages.list())
        .singleElement()
        .satisfies(line -> assertThat(line.awaited().overdue()).isTrue());

    ReceiveGoods receive = new ReceiveGoods(desk);
    ReceiveGoods.Request all =
        new ReceiveGoods.Request("P-1", Optional.empty(), Over.REFUSED, "ines");
    Order received = receive.receive(all).standing().order();
    assertThat(received.lines().get(0).counts().reserved()).isEqualTo(500);
    assertThat(shortages.list()).isEmpty();
    assertThatThrownBy(() -> receive.receive(all))
        .isInstanceOf(ConflictException.class)
        .hasMessageContaining("still to come");
  }

  private Order ordered() {
    String number = QuotesAtTheDesk.issued(desk).number();
    new AcceptQuote(desk).accept(number, Optional.empty(), "ines");
    return new RaiseOrder(desk).raise(number, true, "ines").order();
  }
}
