package hosewright.paper.drawing;

import hosewright.paper.page.Lettering;
import hosewright.paper.page.Paper;
import hosewright.paper.page.Picture;
import hosewright.paper.page.Picture.Anchor;
import hosewright.paper.page.Picture.Line;
import hosewright.paper.page.Picture.Mark;
import hosewright.paper.page.Picture.Outline;
import hosewright.paper.page.Picture.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The measuring strip in pieces as long as the paper is wide; all lengths are true, 72 points to an
 * inch, as long as the picture is drawn as wide as it says.
 */
final class StripPicture {
  static final double POINTS_PER_INCH = 72;

  /** Stroke of a thread's mark, by which it differs from the ruler's lines. */
  static final double MARK_STROKE = 0.9;

  private static final double POINTS_PER_MM = POINTS_PER_INCH / 25.4;
  private static final double RULER_STROKE = 0.3;
  private static final double LEFT = 4;
  private static final double RULER = 13;
  private static final double LANE = 7;
  private static final double LETTER_SIZE = 5.5;
  private static final double TAB = 26;

  private final Paper paper;
  private final double width;
  private final List<StripMark> marks;
  private final String name;

  /**
   * @param width points across the sheet
   * @param name what to call the strip on each piece
   */
  StripPicture(Paper paper, double width, List<StripMark> marks, String name) {
    this.paper = paper;
    this.width = width;
    this.marks = marks;
    this.name = name;
  }

  /** One piece, points: a round number of the ruler's units. */
  private double pieceLength() {
    return paper == Paper.A4 ? 160 * POINTS_PER_MM : 6.5 * POINTS_PER_INCH;
  }

  int pieces() {
    double longest = marks.stream().mapToDouble(StripMark::circumferenceIn).max().orElse(0);
    return (int) Math.ceil((longest + 0.5) * POINTS_PER_INCH / pieceLength());
  }

  private double height() {
    return RULER + LANE * StripMark.lanes(marks) + 4;
  }

  /**
   * A piece, its left edge at that many piece lengths from the start of the strip.
   *
   * @param piece 0 for the first
   */
  Picture piece(int piece) {
    List<Mark> drawn = new ArrayList<>();
    boolean last = piece == pieces() - 1;
    if (!last) {
      drawn.add(Outline.box(LEFT + pieceLength(), 0, TAB, height(), RULER_STROKE, 0.9));
      drawn.add(words(LEFT + pieceLength() + 2, height() / 2 - 1, "glue " + (piece + 2)));
      drawn.add(words(LEFT + pieceLength() + 2, height() / 2 + 6, "on this"));
    }
    drawn.add(Outline.box(LEFT, 0, pieceLength(), height(), 0.6, 1));
    ruler(piece, drawn);
    for (StripMark mark : marks) {
      double x = mark.circumferenceIn() * POINTS_PER_INCH - piece * pieceLength();
      if (x >= 0 && x < pieceLength()) {
        mark(mark, x, drawn);
      }
    }
    if (piece == 0) {
      start(drawn);
    }
    return new Picture(width, height(), drawn);
  }

  private void mark(StripMark mark, double x, List<Mark> drawn) {
    double top = RULER + LANE * mark.lane();
    drawn.add(new Line(LEFT + x, top, LEFT + x, top + LANE, MARK_STROKE));
    double wide = Lettering.sans().widthPt(mark.label(), LETTER_SIZE);
    boolean fits = x + wide + 3 < pieceLength();
    drawn.add(
        new Words(
            LEFT + x + (fits ? 1.6 : -1.6),
            top + LANE - 1.6,
            LETTER_SIZE,
            fits ? Anchor.START : Anchor.END,
            mark.label()));
  }

  private void ruler(int piece, List<Mark> drawn) {
    double step = paper == Paper.A4 ? 2 * POINTS_PER_MM : POINTS_PER_INCH / 8;
    int numbered = paper == Paper.A4 ? 5 : 8;
    int steps = (int) Math.round(pieceLength() / step);
    for (int i = 0; i < steps; i++) {
      int along = piece * steps + i;
      boolean whole = along % numbered == 0;
      double x = LEFT + i * step;
      drawn.add(new Line(x, 0, x, whole ? 6 : 3.5, RULER_STROKE));
      if (whole && along > 0) {
        String number = String.format(Locale.ROOT, "%d", along / numbered);
        drawn.add(new Words(x + 1.5, 9, 5.5, Anchor.START, number));
      }
    }
  }

  /** The edge to read at, and what to do, where no thread is so small. */
  private void start(List<Mark> drawn) {
    double middle = RULER + (height() - RULER) / 2;
    drawn.add(
        new Outline(
            List.of(LEFT, middle, LEFT + 10, middle - 5, LEFT + 10, middle + 5), RULER_STROKE, 0));
    drawn.add(words(LEFT + 14, middle - 5, "READ AT THIS EDGE: " + name));
    drawn.add(words(LEFT + 14, middle + 2, "round the MALE, on the crests, pulled snug,"));
    drawn.add(words(LEFT + 14, middle + 9, "this edge on top; ruler in " + unit() + " round"));
  }

  private String unit() {
    return paper == Paper.A4 ? "cm" : "inches";
  }

  private static Words words(double x, double y, String text) {
    return new Words(x, y, LETTER_SIZE, Anchor.START, text);
  }

  /** A bar of known length, to be measured on the printed sheet. */
  static Picture bar(Paper paper, double width) {
    double length = paper == Paper.A4 ? 150 * POINTS_PER_MM : 6 * POINTS_PER_INCH;
    String said = paper == Paper.A4 ? "150 mm" : "6 inches (152.4 mm)";
    List<Mark> drawn = new ArrayList<>();
    drawn.add(Outline.box(LEFT, 2, length, 6, 0.6, 0.75));
    drawn.add(
        new Words(
            LEFT + length / 2,
            18,
            8,
            Anchor.MIDDLE,
            "This bar must measure " + said + " exactly."));
    return new Picture(width, 24, drawn);
  }
}
