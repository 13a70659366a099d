package hosewright.catalogue;

/** How an item is counted on a quote; codes from UN/ECE Recommendation 20. */
public enum UnitOfSale {
  EACH("each", "EA"),
  FOOT("foot", "FOT"),
  SET("set", "SET"),
  PAIR("pair", "PR");

  private final String word;
  private final String code;

  UnitOfSale(String word, String code) {
    this.word = word;
    this.code = code;
  }

  public String word() {
    return word;
  }

  /** The UN/ECE Recommendation 20 code. */
  public String code() {
    return code;
  }
}
