package hosewright.desk.customer;

import java.util.Locale;

/** What may be said of a customer, beside contract prices. */
public enum CustomerField {
  ID(""),
  NAME(""),
  CLASS(""),
  ADDRESS(""),
  DISCOUNT("0%"),
  TAX_NAME(""),
  TAX_RATE("0%"),
  EXEMPTION(""),
  EXEMPTION_DATE(""),
  FREIGHT("weight table");

  private final String standard;

  CustomerField(String standard) {
    this.standard = standard;
  }

  /** The name a user knows it by. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What holds where nothing is said; empty where nothing does. */
  public String standard() {
    return standard;
  }
}
