package hosewright.order;

import hosewright.catalogue.Catalogue;
import hosewright.order.Coming.Load;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The earliest day everything of an order can go. */
public final class ShipDay {
  private ShipDay() {}

  /**
   * The day the last goods are there, and then as long as the slowest work takes; empty where
   * nobody is asked for some of it.
   *
   * @param lines of an order; what has gone or is cancelled is not waited for
   * @param today goods on the shelf are there
   */
  public static Optional<LocalDate> of(
      String order, List<OrderLine> lines, Coming coming, int workDays, LocalDate today) {
    List<OrderLine> open = lines.stream().filter(line -> line.open() > 0).toList();
    if (open.stream().anyMatch(line -> coming.unsupplied(order, line.position()) > 0)) {
      return Optional.empty();
    }
    LocalDate goods =
        open.stream()
            .flatMap(line -> coming.serving(order, line.position()).stream())
            .map(Load::expectedOn)
            .reduce(today, (one, other) -> one.isAfter(other) ? one : other);
    return Optional.of(goods.plusDays(workDays));
  }

  /**
   * How long the slowest work among lines takes that is still to do.
   *
   * @param catalogue knows the work of the lines
   */
  public static int workDays(List<OrderLine> lines, Catalogue catalogue) {
    return lines.stream()
        .filter(line -> line.open() > 0)
        .flatMap(line -> catalogue.item(line.ware().item()).stream())
        .filter(item -> item.kind().isWork())
        .mapToInt(item -> item.stocking().leadDays())
        .max()
        .orElse(0);
  }
}
