package hosewright.desk.catalogue;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.store.catalogue.CatalogueUses.QuoteUse;
import hosewright.thread.End;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/** All the books know of an item. */
public record ShownItem(
    String item,
    String description,
    List<End> ends,
    Map<String, String> facts,
    @JsonUnwrapped Stock stock,
    @JsonUnwrapped Pricing pricing,
    @JsonUnwrapped Uses uses) {

  public record BreakPrice(
      int minimumQuantity, Money unitPrice, LocalDate from, Optional<LocalDate> until) {}

  public record SupplierTerms(String code, String name, int leadDays, int pack) {}

  /** Margin is that of the list price of one, as a fraction. */
  public record CostAndMargin(
      String supplier, Money unitCost, Optional<BigDecimal> margin, List<String> unknownBecause) {}

  /** How it is counted, kept and bought. */
  public record Stock(int onHand, String unit, String unitCode, Optional<SupplierTerms> supplier) {}

  /**
   * What it costs on a day.
   *
   * @param prices price breaks in force today
   * @param costs absent unless asked for with {@code --internal}
   */
  public record Pricing(
      LocalDate date, List<BreakPrice> prices, Optional<List<CostAndMargin>> costs) {}

  /** What it goes into. */
  public record Uses(List<String> planUses, List<QuoteUse> quotes) {}
}
