package hosewright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How one kind of quantity is shown: its unit, and the decimals that mean something in it.
 *
 * <p>Every figure goes in in the US unit the scale was made for.
 */
public final class Scale {
  private final TradeUnit from;
  private final TradeUnit to;
  private final int decimals;

  Scale(TradeUnit from, TradeUnit to, int decimals) {
    this.from = from;
    this.to = to;
    this.decimals = decimals;
  }

  /** The unit shown, such as "bar". */
  public String unit() {
    return to.label();
  }

  /** The number alone, always with its decimals, for a column of figures. */
  public String figure(double us) {
    return new BigDecimal(in(us)).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /** Number and unit, thousands separated and no zeros that say nothing, for a sentence. */
  public String of(double us) {
    return Shown.number(in(us), decimals) + " " + unit();
  }

  /** The number in the unit shown, not rounded. */
  public double in(double us) {
    return Conversion.convert(us, from, to);
  }
}
