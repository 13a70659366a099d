package hosewright.desk.order;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.desk.Books;
import hosewright.order.Coming.Load;
import hosewright.order.Order;
import hosewright.order.OrderLine;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
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
     * @param purchase the purchase order that brings the first of it, whichever order it was made
     *     for; empty when nobody is asked for it
     * @param unsupplied how many nobody is asked for
     */
    public record Awaited(
        Optional<String> purchase,
        Optional<LocalDate> expectedOn,
        boolean overdue,
        int unsupplied) {}
  }

  /** Every line of an order that is short of goods today, the oldest promise first. */
  public List<Shortage> list() {
    List<Shortage> all = new ArrayList<>();
    try (Books open = books.get()) {
      List<Order> oldestFirst = new ArrayList<>(open.orders().list());
      Collections.reverse(oldestFirst);
      for (Order order : oldestFirst) {
        if (order.lines().stream().anyMatch(line -> line.shortage() > 0)) {
          Standing standing = Standing.of(order, open);
          order.lines().stream()
              .filter(line -> line.shortage() > 0)
              .map(line -> shortage(standing, line, open.today()))
              .forEach(all::add);
        }
      }
    }
    return all;
  }

  private static Shortage shortage(Standing standing, OrderLine line, LocalDate today) {
    List<Load> serving = standing.coming().serving(standing.order().number(), line.position());
    Optional<Load> first = serving.stream().findFirst();
    return new Shortage(
        standing.order().number(),
        line.position(),
        line.ware().item(),
        line.ware().description(),
        line.shortage(),
        new Shortage.Awaited(
            first.map(Load::purchase),
            first.map(Load::expectedOn),
            first.filter(load -> load.expectedOn().isBefore(today)).isPresent(),
            standing.unsupplied(line.position())));
  }
}
