package hosewright.door.shell.customer;

import hosewright.desk.Books;
import hosewright.desk.customer.AddCustomer;
import hosewright.desk.customer.CustomerField;
import hosewright.desk.customer.OfferClasses;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.problem.BadInputException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** How commands are told a customer's terms. */
final class CustomerOptions {
  private CustomerOptions() {}

  static OptionSpec[] options(Supplier<Books> books) {
    return new OptionSpec[] {
      said(CustomerField.ID, "ID", "short id used in commands").asRequired(),
      said(CustomerField.NAME, "NAME", "name on papers").asRequired(),
      said(CustomerField.CLASS, "CLASS", "class, which has the margin floor")
          .asRequired()
          .completing(() -> classes(books)),
      said(CustomerField.ADDRESS, "TEXT", "postal address"),
      said(CustomerField.DISCOUNT, "PERCENT", "percentage off list"),
      said(CustomerField.TAX_NAME, "NAME", "name of the tax"),
      said(CustomerField.TAX_RATE, "PERCENT", "rate of the tax"),
      said(CustomerField.EXEMPTION, "CERTIFICATE", "number of the tax exemption certificate"),
      said(CustomerField.EXEMPTION_DATE, "YYYY-MM-DD", "date of that certificate"),
      said(CustomerField.FREIGHT, "TERMS", "prepaid, collect or weight table")
          .completing("weight table", "prepaid", "collect"),
      OptionSpec.value("contract", "TERMS", "a contract price: " + AddCustomer.CONTRACT)
          .asRepeatable()
    };
  }

  private static OptionSpec said(CustomerField field, String placeholder, String meaning) {
    OptionSpec option = OptionSpec.value(field.word(), placeholder, meaning);
    return field.standard().isEmpty() ? option : option.withDefault(field.standard());
  }

  /** What was typed of a customer. */
  static Map<CustomerField, String> said(Invocation in) {
    Map<CustomerField, String> said = new EnumMap<>(CustomerField.class);
    for (CustomerField field : CustomerField.values()) {
      in.value(field.word()).ifPresent(text -> said.put(field, text));
    }
    return said;
  }

  private static List<String> classes(Supplier<Books> books) {
    try {
      return new OfferClasses(books).classes();
    } catch (BadInputException e) {
      return List.of();
    }
  }
}
