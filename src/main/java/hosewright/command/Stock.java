package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.NetPrice;
import hosewright.line.StockBridges;
import hosewright.problem.BadInputException;
import hosewright.quote.Terms;
import java.time.LocalDate;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** The adapters in the dealer's books at today's prices. */
final class Stock {
  private Stock() {}

  static StockBridges bridges(Books books) {
    return bridges(books, Optional.empty());
  }

  /**
   * @param customer whose terms price them; empty for list prices
   */
  static StockBridges bridges(Books books, Optional<String> customer) {
    Catalogue catalogue = books.catalogue();
    LocalDate today = books.today();
    CurrencyUnit currency =
        catalogue
            .currency()
            .orElseThrow(
                () ->
                    new BadInputException(
                        "catalogue", "", "load one that has prices: catalogue load FOLDER"));
    NetPrice prices =
        customer
            .map(id -> books.customers().get(id, today))
            .<NetPrice>map(buyer -> new Terms(catalogue, buyer, today))
            .orElseGet(() -> catalogue.listPricesOn(today));
    return new StockBridges(catalogue, prices, currency);
  }
}
