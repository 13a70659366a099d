package hosewright.door.shell.words;

import hosewright.door.shell.screen.Screen;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.commons.text.WordUtils;

/** An answer's sentences and tables, one below the other, the sentences wrapped to the screen. */
public final class Prose {
  private static final int WIDEST = 100;
  private static final int NARROWEST = 30;

  private final int width;
  private final StringBuilder text = new StringBuilder();

  public Prose(Screen screen) {
    this.width = Math.max(NARROWEST, Math.min(screen.width(), WIDEST));
  }

  /** A sentence; what runs over hangs under it. */
  public Prose line(String sentence) {
    return line("", sentence);
  }

  /** A sentence with a margin. */
  public Prose line(String margin, String sentence) {
    String hanging = "\n" + margin + "  ";
    text.append(margin)
        .append(WordUtils.wrap(sentence, width - margin.length() - 2, hanging, false))
        .append('\n');
    return this;
  }

  /** A table or drawing, set off by empty lines. */
  public Prose block(String drawn) {
    text.append('\n').append(drawn.stripTrailing()).append("\n\n");
    return this;
  }

  /** A fraction as people read it, 0.4217 as 42.2 %. */
  public static String percent(BigDecimal fraction) {
    return fraction.movePointRight(2).setScale(1, RoundingMode.HALF_UP).toPlainString() + " %";
  }

  @Override
  public String toString() {
    return text.toString().stripTrailing();
  }
}
