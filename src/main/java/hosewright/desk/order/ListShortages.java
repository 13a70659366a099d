package hosewright.desk.order;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.desk.Books;
import hosewright.order.Order;
import hosewright.order.OrderLine;
import hosewright.order.PurchaseOrder;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Lists what orders wait for: how much, from whom, since when overdue. */
public final class ListShortages {
  private final Supplier<Books> books;

  public ListShortages(Supplier<Books> books) {
    this.books = books;
  }

  /** One line that waits. */
  public record Shortage(
      String order,
      int line,
      String item,
      String description,
      int shortage,
      @JsonUnwrapped Awaited awaited) {

    /**
     * What brings it, and when.
     *
     * @param purchase the purchase order that brings it; empty when nobody is asked for it
     */
    public record Awaited(
        Optional<String> purchase, Optional<LocalDate> expectedOn, boolean overdue) {}
  }

  /** Every line of an order that is short of goods today. */
  public List<Shortage> list() {
    List<Shortage> all = new ArrayList<>();
    try (Books open = books.get()) {
      for (Order order : open.orders().list()) {
        order.lines().stream()
            .filter(line -> line.shortage() > 0)
            .map(line -> shortage(order, line, open.today()))
            .forEach(all::add);
      }
    }
    return all;
  }

  private static Shortage shortage(Order order, OrderLine line, LocalDate today) {
    Optional<PurchaseOrder> coming =
        order.purchases().stream()
            .filter(
                purchase ->
                    purchase.lines().stream()
                        .anyMatch(
                            bought ->
                                bought.ware().stockCode().equals(line.ware().stockCode())
                                    && bought.outstanding() > 0))
            .findFirst();
    return new Shortage(
        order.number(),
        line.position(),
        line.ware().item(),
        line.ware().description(),
        line.shortage(),
        new Shortage.Awaited(
            coming.map(PurchaseOrder::number),
            coming.map(PurchaseOrder::expectedOn),
            coming.filter(purchase -> purchase.expectedOn().isBefore(today)).isPresent()));
  }
}
