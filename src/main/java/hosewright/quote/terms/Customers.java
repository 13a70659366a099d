package hosewright.quote.terms;

import hosewright.problem.BadInputException;
import hosewright.problem.NoSuchThingException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.joda.money.Money;

/**
 * Every buyer the dealer knows, with what was agreed with each. Immutable.
 *
 * @param customers buyers; their contract prices are left empty here, since they depend on the day
 * @param contractPrices contract prices of every buyer, in every period
 */
public record Customers(List<Customer> customers, List<ContractPrice> contractPrices) {

  /** The id under which a dealer keeps what holds for sales over the counter. */
  private static final String COUNTER = "COUNTER";

  public Customers {
    customers = List.copyOf(customers);
    contractPrices = List.copyOf(contractPrices);
  }

  /** A buyer with the contract prices in force on a date. */
  public Optional<Customer> find(String id, LocalDate date) {
    Map<String, Money> agreed =
        contractPrices.stream()
            .filter(price -> price.customer().equals(id) && price.inForceOn(date))
            .collect(Collectors.toUnmodifiableMap(ContractPrice::item, ContractPrice::unitPrice));
    return customers.stream()
        .filter(customer -> customer.id().equals(id))
        .findFirst()
        .map(customer -> customer.withContractPrices(agreed));
  }

  /**
   * The buyer of an id somebody typed, at the contract prices of a day.
   *
   * @throws BadInputException naming the nearest id when there is no such buyer
   */
  public Customer get(String id, LocalDate date) {
    return find(id, date)
        .orElseThrow(
            () ->
                new NoSuchThingException(
                    "customer",
                    id,
                    customers.stream().map(Customer::id).toList(),
                    "'customer list' shows all"));
  }

  /** Buyers by id. */
  public Map<String, Customer> byId() {
    return customers.stream()
        .collect(Collectors.toUnmodifiableMap(Customer::id, Function.identity()));
  }

  /**
   * Whoever buys over the counter without a name on the books.
   *
   * @throws BadInputException naming all buyers, where the dealer keeps none for that
   */
  public Customer counter() {
    return customers.stream()
        .filter(customer -> customer.id().equals(COUNTER))
        .findFirst()
        .orElseThrow(this::noneNamed);
  }

  /** What somebody is told who named no buyer where one is needed. */
  public BadInputException noneNamed() {
    String ids = customers.stream().map(Customer::id).sorted().collect(Collectors.joining(", "));
    return new BadInputException("customer", "", "a quote is made for one of " + ids);
  }
}
