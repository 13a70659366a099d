package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Signing;
import hosewright.order.Order;
import hosewright.order.OrderBook;
import hosewright.order.PurchaseOrder;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** How commands name an order, a purchase order and quantities of their lines. */
final class OrderChoice {
  private OrderChoice() {}

  static ArgumentSpec argument(Supplier<Books> books) {
    return ArgumentSpec.required("NUMBER", "the order's number, such as O-000001")
        .completing(() -> numbers(books, OrderChoice::orders));
  }

  static ArgumentSpec purchaseArgument(Supplier<Books> books) {
    return ArgumentSpec.required("NUMBER", "the purchase order's number, such as P-000001")
        .completing(() -> numbers(books, OrderChoice::purchases));
  }

  static OptionSpec lines() {
    return OptionSpec.value("line", "LINE=N", "only so many of a line")
        .withDefaultSaid("all there is")
        .asRepeatable();
  }

  /** The order named; an order may be written {@code O-000001}, {@code O-1} or {@code 1}. */
  static Order order(Invocation in, Books books) {
    String typed = in.argument(0).orElseThrow();
    return books
        .orders()
        .find(canonical("O", typed))
        .orElseThrow(() -> unknown(typed, orders(books.orders()), "order raise"));
  }

  /** The number of the purchase order named. */
  static PurchaseOrder purchase(Invocation in, Books books) {
    String typed = in.argument(0).orElseThrow();
    String number = canonical("P", typed);
    return books.orders().findByPurchase(number).stream()
        .flatMap(order -> order.purchases().stream())
        .filter(purchase -> purchase.number().equals(number))
        .findFirst()
        .orElseThrow(() -> unknown(typed, purchases(books.orders()), "order raise"));
  }

  /**
   * The quantities behind {@code --line}.
   *
   * @return empty when none was typed
   */
  static Optional<Map<Integer, Integer>> quantities(Invocation in) {
    Map<Integer, Integer> quantities = new LinkedHashMap<>();
    List<Problem> problems = new ArrayList<>();
    for (String typed : in.values("line")) {
      String[] parts = typed.split("=", -1);
      if (parts.length == 2
          && parts[0].strip().matches("\\d{1,5}")
          && parts[1].strip().matches("\\d{1,6}")) {
        int line = Integer.parseInt(parts[0].strip());
        if (quantities.put(line, Integer.parseInt(parts[1].strip())) != null) {
          problems.add(Problem.of("line", typed, "each line once"));
        }
      } else {
        problems.add(
            Problem.of("line", typed, "the number of a line and a quantity, such as 2=12"));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return quantities.isEmpty() ? Optional.empty() : Optional.of(quantities);
  }

  static OrderBook.Actor actor(Invocation in, Books books) {
    return Signing.actor(SignedBy.name(in), books.now());
  }

  private static String canonical(String letter, String typed) {
    String digits = typed.strip().replaceFirst("^(?i)" + letter + "-?", "");
    return digits.matches("\\d{1,9}")
        ? String.format(Locale.ROOT, "%s-%06d", letter, Integer.parseInt(digits))
        : typed.strip();
  }

  private static BadInputException unknown(String typed, List<String> known, String first) {
    String allowed = known.isEmpty() ? "there are none yet: " + first : "one of those on file";
    return new BadInputException(
        List.of(new Problem("number", typed, allowed, Nearest.to(typed, known))));
  }

  private static List<String> numbers(
      Supplier<Books> books, Function<OrderBook, List<String>> which) {
    try (Books open = books.get()) {
      return which.apply(open.orders());
    }
  }

  private static List<String> orders(OrderBook book) {
    return book.list().stream().map(Order::number).toList();
  }

  private static List<String> purchases(OrderBook book) {
    return book.list().stream()
        .flatMap(order -> order.purchases().stream())
        .map(PurchaseOrder::number)
        .toList();
  }
}
