package hosewright.desk.catalogue;

import hosewright.store.catalogue.CatalogueUses.QuoteUse;
import hosewright.thread.End;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/**
 * All the books know of an item.
 *
 * @param prices price breaks in force today
 * @param costs absent unless asked for with {@code --internal}
 */
public record ShownItem(
    String item,
    String description,
    List<End> ends,
    Map<String, String> facts,
    int onHand,
    String unit,
    String unitCode,
    LocalDate date,
    List<BreakPrice> prices,
    Optional<SupplierTerms> supplier,
    List<String> planUses,
    List<QuoteUse> quotes,
    Optional<List<CostAndMargin>> costs) {

  public record BreakPrice(
      int minimumQuantity, Money unitPrice, LocalDate from, Optional<LocalDate> until) {}

  public record SupplierTerms(String code, String name, int leadDays, int pack) {}

  /** Margin is that of the list price of one, as a fraction. */
  public record CostAndMargin(
      String supplier, Money unitCost, Optional<BigDecimal> margin, List<String> unknownBecause) {}
}
