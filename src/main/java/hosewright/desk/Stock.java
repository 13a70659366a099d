package hosewright.desk;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.NetPrice;
import hosewright.line.bridge.StockBridges;
import hosewright.quote.terms.CustomerTerms;
import java.time.LocalDate;
import java.util.Optional;

/** The adapters in the dealer's books at today's prices. */
public final class Stock {
  private Stock() {}

  public static StockBridges bridges(Books books) {
    return bridges(books, Optional.empty());
  }

  /**
   * @param customer whose terms price them; empty for list prices
   */
  public static StockBridges bridges(Books books, Optional<String> customer) {
    Catalogue catalogue = books.catalogue();
    LocalDate today = books.today();
    NetPrice prices =
        CustomerTerms.of(catalogue, customer.map(id -> books.customers().get(id, today)), today);
    return new StockBridges(catalogue, prices, catalogue.currencyNeeded());
  }
}
