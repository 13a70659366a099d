package hosewright.store;

import static hosewright.store.db.Tables.CONTRACT_PRICE;
import static hosewright.store.db.Tables.CUSTOMER;

import hosewright.quote.ContractPrice;
import hosewright.quote.Customer;
import hosewright.quote.Customers;
import hosewright.store.db.tables.records.ContractPriceRecord;
import hosewright.store.db.tables.records.CustomerRecord;
import java.math.BigDecimal;
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

  /** Puts these buyers in the place of all buyers kept, whole or not at all. */
  public void replace(Customers customers) {
    context.transaction(
        nested -> {
          DSLContext inside = nested.dsl();
          inside.deleteFrom(CONTRACT_PRICE).execute();
          inside.deleteFrom(CUSTOMER).execute();
          Rows.insert(
              inside, CUSTOMER, customers.customers().stream().map(CustomerStore::row).toList());
          insertPrices(inside, customers.contractPrices());
        });
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
          inside.batchMerge(List.of(row(customer))).execute();
          inside
              .deleteFrom(CONTRACT_PRICE)
              .where(CONTRACT_PRICE.CUSTOMER_ID.eq(customer.id()))
              .execute();
          insertPrices(inside, contractPrices);
        });
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

  private static CustomerRecord row(Customer customer) {
    return new CustomerRecord(
        customer.id(),
        customer.name(),
        customer.address(),
        customer.customerClass(),
        customer.discount(),
        customer.taxName(),
        customer.taxRate(),
        customer.exemption().map(Customer.Exemption::certificate).orElse(null),
        customer.exemption().map(Customer.Exemption::dated).orElse(null),
        customer.freightTerms());
  }

  private static Customer customer(CustomerRecord row) {
    return new Customer(
        row.getId(),
        row.getName(),
        row.getAddress(),
        row.getCustomerClass(),
        shortest(row.getDiscount()),
        Map.of(),
        row.getTaxName(),
        shortest(row.getTaxRate()),
        Optional.ofNullable(row.getExemptionCertificate())
            .map(certificate -> new Customer.Exemption(certificate, row.getExemptionDate())),
        row.getFreightTerms());
  }

  private static ContractPriceRecord row(ContractPrice price) {
    return new ContractPriceRecord(
        price.customer(),
        price.item(),
        price.from(),
        price.until().orElse(null),
        price.unitPrice().getAmount(),
        Amounts.code(price.unitPrice()));
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
