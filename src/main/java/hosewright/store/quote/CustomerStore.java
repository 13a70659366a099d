package hosewright.store.quote;

import static hosewright.store.db.Tables.CONTRACT_PRICE;
import static hosewright.store.db.Tables.CUSTOMER;
import static hosewright.store.db.Tables.MARGIN_FLOOR;

import hosewright.quote.terms.ContractPrice;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.Customers;
import hosewright.quote.terms.MarginFloors;
import hosewright.store.database.Amounts;
import hosewright.store.database.Database;
import hosewright.store.database.Rows;
import hosewright.store.database.Turns;
import hosewright.store.db.tables.records.ContractPriceRecord;
import hosewright.store.db.tables.records.CustomerRecord;
import hosewright.store.db.tables.records.MarginFloorRecord;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.DSLContext;

/** Keeps buyers and what was agreed with them. */
public final class CustomerStore {
  private final DSLContext context;

  public CustomerStore(Database database) {
    this.context = database.context();
  }

  /** Keeps others from changing buyers until the transaction ends. */
  public void takeTurn() {
    Turns.take(context, CUSTOMER);
  }

  /**
   * Puts these buyers in the place of all buyers kept, whole or not at all. A buyer that was {@link
   * #save saved} by itself and is not among them stays.
   */
  public void replace(Customers customers) {
    List<String> ids = customers.customers().stream().map(Customer::id).toList();
    context.transaction(
        nested -> {
          DSLContext inside = nested.dsl();
          List<String> staying =
              inside.select(CUSTOMER.ID).from(CUSTOMER).where(CUSTOMER.ENTERED).fetch(CUSTOMER.ID);
          staying.removeAll(ids);
          inside
              .deleteFrom(CONTRACT_PRICE)
              .where(CONTRACT_PRICE.CUSTOMER_ID.notIn(staying))
              .execute();
          inside.deleteFrom(CUSTOMER).where(CUSTOMER.ID.notIn(staying)).execute();
          Rows.insert(
              inside,
              CUSTOMER,
              customers.customers().stream().map(buyer -> row(buyer, false)).toList());
          insertPrices(inside, customers.contractPrices());
        });
  }

  /** Puts these floors in the place of those kept, whole or not at all. */
  public void replaceFloors(MarginFloors floors) {
    context.transaction(
        nested -> {
          List<MarginFloorRecord> rows = new ArrayList<>();
          floors
              .byClass()
              .forEach(
                  (name, floor) ->
                      rows.add(new MarginFloorRecord(name, floor, rows.size() + 1, null)));
          nested.dsl().deleteFrom(MARGIN_FLOOR).execute();
          Rows.insert(nested.dsl(), MARGIN_FLOOR, rows);
        });
  }

  /** The least margin wanted of each class of buyers. */
  public MarginFloors floors() {
    Map<String, BigDecimal> floors = new LinkedHashMap<>();
    context
        .selectFrom(MARGIN_FLOOR)
        .orderBy(MARGIN_FLOOR.FILE_ORDER)
        .forEach(row -> floors.put(row.getCustomerClass(), shortest(row.getFloor())));
    return new MarginFloors(floors);
  }

  /**
   * Adds one buyer, or puts it in the place of the one with its id.
   *
   * @param contractPrices all contract prices of this buyer
   */
  public void save(Customer customer, List<ContractPrice> contractPrices) {
    context.transaction(
        nested -> {
          DSLContext inside = nested.dsl();
          Rows.merge(inside, CUSTOMER, List.of(row(customer, true)));
          inside
              .deleteFrom(CONTRACT_PRICE)
              .where(CONTRACT_PRICE.CUSTOMER_ID.eq(customer.id()))
              .execute();
          insertPrices(inside, contractPrices);
        });
  }

  /** The ids of all buyers. */
  public List<String> ids() {
    return context.select(CUSTOMER.ID).from(CUSTOMER).orderBy(CUSTOMER.ID).fetch(CUSTOMER.ID);
  }

  /** All buyers, by id. */
  public Customers load() {
    return new Customers(
        context.selectFrom(CUSTOMER).orderBy(CUSTOMER.ID).fetch(CustomerStore::customer),
        context
            .selectFrom(CONTRACT_PRICE)
            .orderBy(
                CONTRACT_PRICE.CUSTOMER_ID, CONTRACT_PRICE.ITEM_NUMBER, CONTRACT_PRICE.VALID_FROM)
            .fetch(CustomerStore::contractPrice));
  }

  private static void insertPrices(DSLContext inside, List<ContractPrice> prices) {
    Rows.insert(inside, CONTRACT_PRICE, prices.stream().map(CustomerStore::row).toList());
  }

  private static CustomerRecord row(Customer customer, boolean entered) {
    return new CustomerRecord(
        customer.id(),
        customer.name(),
        customer.address(),
        customer.pricing().customerClass(),
        customer.discount(),
        customer.taxation().taxName(),
        customer.taxation().taxRate(),
        customer.taxation().exemption().map(Customer.Exemption::certificate).orElse(null),
        customer.taxation().exemption().map(Customer.Exemption::dated).orElse(null),
        customer.freightTerms(),
        entered,
        null);
  }

  private static Customer customer(CustomerRecord row) {
    return new Customer(
        row.getId(),
        row.getName(),
        row.getAddress(),
        new Customer.Pricing(row.getCustomerClass(), shortest(row.getDiscount()), Map.of()),
        new Customer.Taxation(
            row.getTaxName(),
            shortest(row.getTaxRate()),
            Optional.ofNullable(row.getExemptionCertificate())
                .map(certificate -> new Customer.Exemption(certificate, row.getExemptionDate()))),
        row.getFreightTerms());
  }

  private static ContractPriceRecord row(ContractPrice price) {
    return new ContractPriceRecord(
        price.customer(),
        price.item(),
        price.from(),
        price.until().orElse(null),
        price.unitPrice().getAmount(),
        Amounts.code(price.unitPrice()),
        null);
  }

  private static ContractPrice contractPrice(ContractPriceRecord row) {
    return new ContractPrice(
        row.getCustomerId(),
        row.getItemNumber(),
        row.getValidFrom(),
        Optional.ofNullable(row.getValidUntil()),
        Amounts.money(row.getUnitPrice(), row.getCurrency()));
  }

  /** A column pads fractions with zeros; 0.1 and 0.100000 would not be equal. */
  private static BigDecimal shortest(BigDecimal fraction) {
    return fraction.signum() == 0 ? BigDecimal.ZERO : fraction.stripTrailingZeros();
  }
}
