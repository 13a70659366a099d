package hosewright.door.shell.screen;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.text.WordUtils;

/** Terms with their explanations, the explanations wrapped beside them. */
public final class Listing {
  private static final int INDENT = 2;
  private static final int NARROWEST = 20;

  private final List<String[]> rows = new ArrayList<>();

  public void add(String term, String explanation) {
    rows.add(new String[] {term, explanation});
  }

  public String under(String title, Screen screen) {
    int terms = rows.stream().mapToInt(r -> r[0].length()).max().orElse(0);
    int left = INDENT + terms + INDENT;
    if (screen.proseWidth() - left < NARROWEST) {
      return below(title, screen);
    }
    int room = screen.proseWidth() - left;
    StringBuilder text = new StringBuilder(title);
    for (String[] row : rows) {
      String margin = "\n" + " ".repeat(left);
      text.append("\n")
          .append(" ".repeat(INDENT))
          .append(row[0])
          .append(" ".repeat(left - INDENT - row[0].length()))
          .append(WordUtils.wrap(row[1], room, margin, false));
    }
    return text.toString();
  }

  /** On a screen too narrow for two columns, each explanation stands under its term. */
  private String below(String title, Screen screen) {
    String margin = "\n" + " ".repeat(2 * INDENT);
    StringBuilder text = new StringBuilder(title);
    for (String[] row : rows) {
      text.append("\n").append(" ".repeat(INDENT)).append(row[0]).append(margin);
      text.append(
          WordUtils.wrap(row[1], Math.max(1, screen.proseWidth() - 2 * INDENT), margin, false));
    }
    return text.toString();
  }
}
