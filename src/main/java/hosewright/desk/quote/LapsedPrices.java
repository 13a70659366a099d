package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.quote.Quote;
import hosewright.quote.terms.ContractPrice;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/** Says of which items of a quote an agreed price has lapsed by the day of the quote. */
final class LapsedPrices {
  private LapsedPrices() {}

  static void tell(Books open, Quote quote) {
    LocalDate day = quote.validity().date();
    List<ContractPrice> agreed =
        open.customers().contractPrices().stream()
            .filter(price -> price.customer().equals(quote.customer().id()))
            .toList();
    quote.lines().stream()
        .map(line -> line.goods().item())
        .distinct()
        .forEach(item -> tell(open, item, day, of(item, agreed)));
  }

  private static List<ContractPrice> of(String item, List<ContractPrice> agreed) {
    return agreed.stream().filter(price -> price.item().equals(item)).toList();
  }

  private static void tell(Books open, String item, LocalDate day, List<ContractPrice> agreed) {
    if (agreed.stream().anyMatch(price -> price.inForceOn(day))) {
      return;
    }
    agreed.stream()
        .flatMap(price -> price.until().stream())
        .filter(last -> last.isBefore(day))
        .max(Comparator.naturalOrder())
        .ifPresent(
            last ->
                open.say(
                    "The price agreed for %s lapsed on %s: on %s it is sold at the customer's usual terms."
                        .formatted(item, last, day)));
  }
}
