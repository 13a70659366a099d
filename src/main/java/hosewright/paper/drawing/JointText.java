package hosewright.paper.drawing;

import hosewright.thread.End;
import hosewright.thread.Gender;
import hosewright.thread.Verdict;
import java.util.List;
import java.util.Map;

/** Two ends facing each other, in letters: = bodies, zigzag threads, # gaskets, o what turns. */
final class JointText {
  private static final Map<Character, Character> TURNED =
      Map.of('/', '\\', '\\', '/', ')', '(', '(', ')', 'J', 'L', 'L', 'J', '>', '<');
  private static final int WIDTH = 19;
  private static final String MARGIN = "  ";

  private JointText() {}

  static String of(End a, End b, Verdict verdict) {
    List<String> left = facingRight(a);
    List<String> right = facingRight(b).stream().map(JointText::turned).toList();
    String between =
        switch (verdict.outcome()) {
          case MATES -> "  ><  ";
          case JAMS -> "  !!  ";
          case NO -> "  XX  ";
          case MEASURE -> "  ??  ";
        };
    StringBuilder text = new StringBuilder();
    String labels = MARGIN + a;
    int wide = MARGIN.length() + 2 * WIDTH + between.length();
    int gap = Math.max(4, wide - labels.length() - b.toString().length());
    text.append(labels).append(" ".repeat(gap)).append(b).append('\n');
    for (int row = 0; row < left.size(); row++) {
      String middle = row % 2 == 1 ? between : " ".repeat(between.length());
      String line = MARGIN + left.get(row) + middle + right.get(row);
      text.append(row == 2 ? axis(wide) : line.stripTrailing()).append('\n');
    }
    String seals = sealWords(verdict);
    text.append(MARGIN)
        .append(seals.isEmpty() ? JointDrawing.heading(verdict) : sign(a, b) + seals);
    return text.append(a.swivel() || b.swivel() ? "; o turns by itself" : "").toString();
  }

  /** Where the joint is kept tight; empty when there is no joint. */
  static String sealWords(Verdict verdict) {
    return switch (verdict.seal()) {
      case GASKET -> "the gasket seals, here";
      case THREAD -> "the threads seal, with sealant on them";
      case LUG -> "the faces seal, drawn together";
      case NONE -> "";
    };
  }

  private static String sign(End a, End b) {
    return a.carriesGasket() || b.carriesGasket() ? "# " : "";
  }

  private static String axis(int wide) {
    return MARGIN + "- ".repeat((wide - MARGIN.length()) / 2).stripTrailing();
  }

  /** Five rows from the outside above to the outside below, the body on the left. */
  private static List<String> facingRight(End end) {
    String rubber = end.carriesGasket() ? "#" : " ";
    String ring = end.swivel() ? "o" : "+";
    if (end.gender() == Gender.SEXLESS) {
      return rows("          +------J", "==========+-----#", "          +------J");
    }
    boolean enters = end.gender() == Gender.MALE || end.gender() == Gender.PLUG;
    if (!end.threaded()) {
      return enters
          ? rows("", "==========+--v----", "")
          : rows("          +---o----", "==========+" + rubber, "          +---o----");
    }
    return enters
        ? mirrored("", "==========+/\\/\\/\\/\\")
        : mirrored("          " + ring + "--------", "==========+" + rubber + "/\\/\\/\\/");
  }

  private static List<String> rows(String outer, String wall, String below) {
    return padded(outer, wall, wall.replace('v', '^'), below);
  }

  private static List<String> mirrored(String outer, String wall) {
    String lower = wall.replace('/', '~').replace('\\', '/').replace('~', '\\');
    return padded(outer, wall, lower, outer);
  }

  private static List<String> padded(String above, String wall, String lower, String below) {
    return List.of(above, wall, "", lower, below).stream()
        .map(row -> row + " ".repeat(WIDTH - row.length()))
        .toList();
  }

  private static String turned(String row) {
    StringBuilder turned = new StringBuilder();
    for (int i = row.length() - 1; i >= 0; i--) {
      turned.append(TURNED.getOrDefault(row.charAt(i), row.charAt(i)));
    }
    return turned.toString();
  }
}
