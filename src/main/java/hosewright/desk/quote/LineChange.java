package hosewright.desk.quote;

import java.util.Locale;

/**
 * A change of a quote's lines or sums by hand, as a seller writes it.
 *
 * @param text {@code 2=12}, {@code 2 x W-SPAN-1} and the like, as its kind has it
 */
public record LineChange(Kind kind, String text) {

  /** What is changed. Changes are made in this order, whatever order they are asked in. */
  public enum Kind {
    /** Takes an offered line into the total. */
    TAKE,
    /** Leaves a line out. */
    DROP,
    /** Prices a part still to be sourced: {@code 1=62.00}. */
    SOURCE,
    /** Adds a line: {@code 2 x W-SPAN-1}, {@code 1 x Crating @ 35.00}. */
    ADD,
    /** Offers a line beside the total, written as one added. */
    OPTIONAL,
    /** Offers a line instead of another: {@code 3: 1 x W-SPAN-1}. */
    ALTERNATE,
    /** Sets a line's quantity: {@code 2=12}. */
    QUANTITY,
    /** Sets the price of one of a line by hand: {@code 2=150.00}; {@code 2=list} ends it. */
    PRICE,
    /** Takes a share off a line: {@code 2=5%}. */
    DISCOUNT,
    /** Puts lines in this order within their groups: {@code 3, 1, 2}. */
    ORDER,
    /** Words above a line: {@code 2=Hose}; nothing behind it takes them away. */
    HEADING,
    /** Words for the buyer below a line: {@code 2=For the rear locker}. */
    REMARK,
    /** Sets the freight: {@code 85.00}, or {@code terms} for what the customer's terms say. */
    FREIGHT,
    /**
     * Sets the place the goods go to, whose tax is charged; {@code usual} for the customer's own.
     */
    SHIP_TO;

    /** What a user calls it. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
