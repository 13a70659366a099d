package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.line.StockBridges;
import hosewright.problem.BadInputException;
import java.time.LocalDate;
import org.joda.money.CurrencyUnit;

/** The adapters in the dealer's books at today's list prices. */
final class Stock {
  private Stock() {}

  static StockBridges bridges(Books books) {
    Catalogue catalogue = books.catalogue();
    LocalDate today = books.today();
    CurrencyUnit currency =
        catalogue
            .currency()
            .orElseThrow(
                () ->
                    new BadInputException(
                        "catalogue", "", "load one that has prices: catalogue load FOLDER"));
    return new StockBridges(catalogue, catalogue.listPricesOn(today), currency);
  }
}
