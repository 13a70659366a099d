package hosewright.door.shell;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What lies where, kept beside the program by somebody who sees every box come and go and knows one
 * rule: the oldest promise is kept first and given up last.
 */
final class TradeLedger {
  final Map<String, Integer> onHand = new LinkedHashMap<>();
  final List<Line> lines = new ArrayList<>();
  final List<Bought> bought = new ArrayList<>();

  /** A line of an order. */
  static final class Line {
    final String order;
    final int position;
    final String item;
    final int quantity;
    int reserved;
    int shipped;
    int cancelled;
    int returned;

    Line(String order, int position, String item, int quantity) {
      this.order = order;
      this.position = position;
      this.item = item;
      this.quantity = quantity;
    }

    int open() {
      return quantity - shipped - cancelled;
    }

    int lacks() {
      return open() - reserved;
    }
  }

  /** A line of a purchase order. */
  static final class Bought {
    final String purchase;
    final String order;
    final int position;
    final String item;
    int awaited;

    Bought(String purchase, String order, int position, String item, int awaited) {
      this.purchase = purchase;
      this.order = order;
      this.position = position;
      this.item = item;
      this.awaited = awaited;
    }
  }

  int onHand(String item) {
    return onHand.getOrDefault(item, 0);
  }

  int reserved(String item) {
    return lines.stream()
        .filter(line -> line.item.equals(item))
        .mapToInt(line -> line.reserved)
        .sum();
  }

  int onOrder(String item) {
    return bought.stream().filter(one -> one.item.equals(item)).mapToInt(one -> one.awaited).sum();
  }

  private int lacking(String item) {
    return lines.stream().filter(line -> line.item.equals(item)).mapToInt(Line::lacks).sum();
  }

  /** Takes an order's line on record; gives how many must be bought for it. */
  int raise(String order, int position, String item, int quantity) {
    int comesUnasked = Math.max(0, onOrder(item) - lacking(item));
    Line line = new Line(order, position, item, quantity);
    line.reserved = Math.min(quantity, onHand(item) - reserved(item));
    lines.add(line);
    return Math.max(0, line.lacks() - comesUnasked);
  }

  void receive(Bought from, int pieces, boolean keepsMore) {
    int due = Math.min(pieces, from.awaited);
    from.awaited -= due;
    put(from.item, keepsMore ? pieces : due);
    serve(from.item);
  }

  void ship(Line line) {
    put(line.item, -line.reserved);
    line.shipped += line.reserved;
    line.reserved = 0;
  }

  void takeBack(Line line, int pieces) {
    line.returned += pieces;
    put(line.item, pieces);
    serve(line.item);
  }

  void count(String item, int pieces) {
    onHand.put(item, pieces);
    for (int i = lines.size() - 1; i >= 0; i--) {
      Line line = lines.get(i);
      if (line.item.equals(item)) {
        line.reserved -= Math.min(line.reserved, Math.max(0, reserved(item) - pieces));
      }
    }
    serve(item);
  }

  void cancel(Line line, int pieces) {
    int waiting = Math.min(pieces, line.lacks());
    line.reserved -= pieces - waiting;
    line.cancelled += pieces;
  }

  void cancel(String order, boolean closePurchases) {
    for (Line line : lines) {
      if (line.order.equals(order)) {
        line.reserved = 0;
        line.cancelled = line.quantity - line.shipped;
      }
    }
    for (Bought one : bought) {
      if (closePurchases && one.order.equals(order)) {
        one.awaited = 0;
      }
    }
  }

  private void put(String item, int pieces) {
    onHand.merge(item, pieces, Integer::sum);
  }

  private void serve(String item) {
    for (Line line : lines) {
      if (line.item.equals(item)) {
        line.reserved += Math.max(0, Math.min(line.lacks(), onHand(item) - reserved(item)));
      }
    }
  }
}
