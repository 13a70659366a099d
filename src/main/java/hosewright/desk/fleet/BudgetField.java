package hosewright.desk.fleet;

import java.util.Locale;

/** What may be said of the budget that is wanted. */
public enum BudgetField {
  YEARS("10"),
  FROM(""),
  AGE_LIMIT(""),
  PRICES("0%"),
  ESCALATION("0%"),
  DISCOUNT_RATE("0%"),
  OVERDUE("0"),
  SEED("1");

  private final String standard;

  BudgetField(String standard) {
    this.standard = standard;
  }

  /** The name a user knows it by. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What holds where nothing is said; empty where that depends on the books. */
  public String standard() {
    return standard;
  }
}
