package hosewright.line.model;

import java.util.List;
import java.util.Optional;

/**
 * What a plan needs and has no price for.
 *
 * @param item the catalogue item without a price in force; empty where nothing in it will do
 * @param what it is, in words, without a count
 * @param quantity how many; 0 where nobody counted them
 */
public record Unpriced(Optional<String> item, String what, int quantity) {

  /** A part that the catalogue has not. */
  public static Unpriced part(int quantity, String what) {
    return new Unpriced(Optional.empty(), what, quantity);
  }

  /** An item of the catalogue that has no price in force. */
  public static Unpriced item(int quantity, String item) {
    return new Unpriced(Optional.of(item), item + " has no price in force", quantity);
  }

  /** So many times as many of it. */
  public Unpriced times(int count) {
    return new Unpriced(item, what, quantity * count);
  }

  /** As many of it as both need together. */
  public Unpriced together(Unpriced other) {
    return new Unpriced(item, what, quantity + other.quantity);
  }

  /** How many parts that is; what nobody counted is one. */
  public static int parts(List<Unpriced> lacking) {
    return lacking.stream().mapToInt(one -> Math.max(1, one.quantity())).sum();
  }

  /**
   * What stands beside a sum that does not hold everything: {@code " and 2 parts without price"};
   * nothing where it does.
   */
  public static String beside(List<Unpriced> lacking) {
    int parts = parts(lacking);
    return switch (parts) {
      case 0 -> "";
      case 1 -> " and 1 part without price";
      default -> " and " + parts + " parts without price";
    };
  }

  /** One line for a person: {@code 2 x gasket for 8 NH female}. */
  public String words() {
    return item.isPresent() || quantity == 0 ? what : quantity + " x " + what;
  }
}
