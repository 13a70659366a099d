package hosewright.quote.terms;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The least margin wanted of each class of customers. For the dealer's own eyes.
 *
 * @param byClass class to fraction, in the order kept
 */
public record MarginFloors(Map<String, BigDecimal> byClass) {
  public static final MarginFloors NONE = new MarginFloors(Map.of());

  public MarginFloors {
    byClass = Collections.unmodifiableMap(new LinkedHashMap<>(byClass));
  }

  /** The least margin wanted of a customer; empty when its class has no floor. */
  public Optional<BigDecimal> of(Customer customer) {
    return Optional.ofNullable(byClass.get(customer.pricing().customerClass()));
  }

  /** Every class that has a floor. */
  public List<String> classes() {
    return List.copyOf(byClass.keySet());
  }
}
