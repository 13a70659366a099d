package hosewright.quote.terms;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/**
 * The dealer's own terms of business.
 *
 * @param freight freight by weight, lightest band first
 * @param settings name, address, validity of quotes and the like, by key
 * @param taxes what is charged where goods are shipped to
 */
public record DealerTerms(List<FreightBand> freight, Map<String, String> settings, TaxTable taxes) {

  public DealerTerms {
    freight = List.copyOf(freight);
    settings = Map.copyOf(settings);
  }

  /** Terms without a table of taxes. */
  public DealerTerms(List<FreightBand> freight, Map<String, String> settings) {
    this(freight, settings, TaxTable.NONE);
  }

  public Optional<String> setting(String key) {
    return Optional.ofNullable(settings.get(key));
  }

  /**
   * Freight for a shipment by the dealer's weight table.
   *
   * @param weightLb shipping weight, lb, 0 or more
   * @return empty above the heaviest band: freight is then to be asked for
   */
  public Optional<Money> freightFor(double weightLb) {
    return freight.stream()
        .filter(band -> weightLb <= band.upToLb())
        .findFirst()
        .map(FreightBand::charge);
  }
}
