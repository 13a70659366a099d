package hosewright.quote;

import hosewright.quote.Quote.Break;
import hosewright.quote.Quote.QuoteLine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

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
    if (!was.get().unitPrice().equals(is.get().unitPrice())) {
      price(was.get(), is.get(), reasons);
    }
    return String.join("; ", reasons);
  }

  private String came(String key) {
    if (before.offered().stream().anyMatch(offer -> offer.line().key().equals(key))) {
      return "the offer was taken";
    }
    return byHand(after, key) ? "added by hand" : "the plan needs it";
  }

  private String went(String key) {
    if (after.amendments().quantities().getOrDefault(key, 1) == 0) {
      return "left out by hand";
    }
    return byHand(before, key) ? "taken out by hand" : "the plan no longer needs it";
  }

  private String quantity(String key) {
    Integer set = after.amendments().quantities().get(key);
    boolean changed = set != null && !set.equals(before.amendments().quantities().get(key));
    return changed || byHand(after, key)
        ? "quantity set by hand"
        : "the plan needs another quantity";
  }

  private static boolean byHand(Quote quote, String key) {
    return quote.amendments().extraLines().stream().anyMatch(line -> line.key().equals(key));
  }

  private static void price(QuoteLine was, QuoteLine is, List<String> reasons) {
    if (!was.discount().equals(is.discount())) {
      reasons.add(is.discount().map(Discount::words).orElse("the line discount ended"));
    }
    if (was.breaks().equals(is.breaks())) {
      if (!step(was).equals(step(is))) {
        reasons.add("price break from " + step(is).minimumQuantity());
      }
    } else if (was.listPrice().equals(is.listPrice())) {
      reasons.add("the customer's terms changed");
    } else {
      reasons.add(
          "list price %s to %s"
              .formatted(
                  was.listPrice().getAmount().toPlainString(),
                  is.listPrice().getAmount().toPlainString()));
    }
  }

  private static Break step(QuoteLine line) {
    return line.breaks().stream()
        .filter(step -> step.minimumQuantity() <= line.quantity())
        .max(Comparator.comparingInt(Break::minimumQuantity))
        .orElseGet(() -> new Break(1, line.unitPrice()));
  }
}
