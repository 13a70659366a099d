package hosewright.quote;

import hosewright.quote.QuoteLine.Break;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.joda.money.Money;

/** Says why a line differs from one quote to another. */
record LineReason(Quote before, Quote after) {

  /** The reason, in a few words. */
  String of(Optional<QuoteLine> was, Optional<QuoteLine> is) {
    if (was.isEmpty()) {
      return came(is.orElseThrow().key());
    }
    if (is.isEmpty()) {
      return went(was.get().key());
    }
    List<String> reasons = new ArrayList<>();
    if (was.get().quantity() != is.get().quantity()) {
      reasons.add(quantity(is.get().key()));
    }
    if (!was.get().price().unitPrice().equals(is.get().price().unitPrice())) {
      price(was.get(), is.get(), reasons);
    }
    return String.join("; ", reasons);
  }

  private String came(String key) {
    if (before.offer().offered().stream().anyMatch(offer -> offer.line().key().equals(key))) {
      return "the offer was taken";
    }
    return byHand(after, key) ? "added by hand" : "the plan needs it";
  }

  private String went(String key) {
    if (after.offer().amendments().quantities().getOrDefault(key, 1) == 0) {
      return "left out by hand";
    }
    return byHand(before, key) ? "taken out by hand" : "the plan no longer needs it";
  }

  private String quantity(String key) {
    Integer set = after.offer().amendments().quantities().get(key);
    boolean changed = set != null && !set.equals(before.offer().amendments().quantities().get(key));
    return changed || byHand(after, key)
        ? "quantity set by hand"
        : "the plan needs another quantity";
  }

  private static boolean byHand(Quote quote, String key) {
    return quote.offer().amendments().extraLines().stream()
        .anyMatch(line -> line.key().equals(key));
  }

  private static void price(QuoteLine was, QuoteLine is, List<String> reasons) {
    if (!was.price().discount().equals(is.price().discount())) {
      reasons.add(is.price().discount().map(Discount::words).orElse("the line discount ended"));
    }
    if (!was.price().agreed().equals(is.price().agreed())) {
      reasons.add(
          is.price().agreed().isPresent() ? "price set by hand" : "the price set by hand ended");
      return;
    }
    if (net(was).equals(net(is))) {
      if (step(was).minimumQuantity() != step(is).minimumQuantity()) {
        reasons.add("price break from " + step(is).minimumQuantity());
      }
    } else if (was.price().listPrice().equals(is.price().listPrice())) {
      reasons.add("the customer's terms changed");
    } else {
      reasons.add(
          "list price %s to %s"
              .formatted(
                  was.price().listPrice().getAmount().toPlainString(),
                  is.price().listPrice().getAmount().toPlainString()));
    }
  }

  /** Breaks by quantity; documents kept earlier have no list prices in them. */
  private static Map<Integer, Money> net(QuoteLine line) {
    Map<Integer, Money> net = new TreeMap<>();
    line.price().breaks().forEach(step -> net.put(step.minimumQuantity(), step.unitPrice()));
    return net;
  }

  private static Break step(QuoteLine line) {
    return line.price().breaks().stream()
        .filter(step -> step.minimumQuantity() <= line.quantity())
        .max(Comparator.comparingInt(Break::minimumQuantity))
        .orElseGet(() -> new Break(1, line.price().unitPrice()));
  }
}
