package hosewright.door.shell.option;

import hosewright.desk.Books;
import hosewright.desk.order.OfferOrders;
import hosewright.desk.order.OfferPurchases;
import hosewright.desk.order.ShipGoods;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** How commands take the name of an order or purchase order, and quantities of their lines. */
public final class OrderArgument {
  private OrderArgument() {}

  public static ArgumentSpec order(Supplier<Books> books) {
    return ArgumentSpec.required("NUMBER", "the order's number, such as O-000001")
        .completing(() -> new OfferOrders(books).numbers());
  }

  public static ArgumentSpec purchase(Supplier<Books> books) {
    return ArgumentSpec.required("NUMBER", "the purchase order's number, such as P-000001")
        .completing(() -> new OfferPurchases(books).numbers());
  }

  public static OptionSpec lines() {
    return OptionSpec.value("line", "LINE=N", "only so many of a line")
        .withDefaultSaid("all there is")
        .asRepeatable();
  }

  /** One group of the order, in the place of lines. */
  public static OptionSpec group() {
    return OptionSpec.value("group", "N", "only the group of this number on the quote")
        .withDefaultSaid("every group");
  }

  /** What of an order is meant: lines, a group, or all. */
  public static ShipGoods.Portion portion(Invocation in) {
    return new ShipGoods.Portion(quantities(in), group(in));
  }

  /**
   * The number behind {@code --group}.
   *
   * @throws BadInputException when it is none
   */
  public static Optional<Integer> group(Invocation in) {
    return in.value("group")
        .map(
            typed -> {
              if (!typed.strip().matches("[1-9]\\d{0,3}")) {
                throw new BadInputException(
                    "group", typed, "the number of a group of the quote, such as 2");
              }
              return Integer.parseInt(typed.strip());
            });
  }

  /**
   * The quantities behind {@code --line}.
   *
   * @return empty when none was typed
   */
  public static Optional<Map<Integer, Integer>> quantities(Invocation in) {
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
}
