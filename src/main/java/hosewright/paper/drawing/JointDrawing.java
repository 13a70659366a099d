package hosewright.paper.drawing;

import hosewright.paper.drawing.EndShape.Place;
import hosewright.paper.page.Lettering;
import hosewright.paper.page.Picture;
import hosewright.paper.page.Picture.Anchor;
import hosewright.paper.page.Picture.Line;
import hosewright.paper.page.Picture.Mark;
import hosewright.paper.page.Picture.Words;
import hosewright.paper.page.SvgPicture;
import hosewright.thread.End;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.List;

/** Two ends facing each other, and where their joint seals. */
public final class JointDrawing {
  private static final double WIDE = 560;
  private static final double HIGH = 300;
  private static final double LARGEST = 150;
  private static final double GAP = 44;
  private static final double AXIS = 125;

  private JointDrawing() {}

  /** The two ends in letters, not to scale; plain ASCII. */
  public static String text(End a, End b, Verdict verdict) {
    return JointText.of(a, b, verdict);
  }

  /** The two ends cut along their axis, to one scale, as an SVG document. */
  public static String svg(End a, End b, Verdict verdict) {
    return SvgPicture.of(picture(a, b, verdict), a + " and " + b + ": " + heading(verdict));
  }

  /** What comes of putting the two together, in a few words. */
  public static String heading(Verdict verdict) {
    return switch (verdict.outcome()) {
      case MATES -> "joins";
      case JAMS -> "starts, then jams: do not force it";
      case NO -> "does not join";
      case MEASURE -> "must be measured first";
    };
  }

  private static Picture picture(End a, End b, Verdict verdict) {
    EndShape left = EndShape.of(a);
    EndShape right = EndShape.of(b);
    double scale =
        Math.min(
            LARGEST / (2 * Math.max(left.outerRadiusIn(), right.outerRadiusIn())),
            (WIDE / 2 - GAP / 2 - 20) / (1.1 * Math.max(left.lengthIn(), right.lengthIn())));
    Place leftPlace = new Place(WIDE / 2 - GAP / 2, AXIS, scale, true);
    Place rightPlace = new Place(WIDE / 2 + GAP / 2, AXIS, scale, false);
    List<Mark> marks = new ArrayList<>(left.marks(leftPlace));
    marks.addAll(right.marks(rightPlace));
    marks.add(new Words(WIDE / 4, 24, 12, Anchor.MIDDLE, a.toString()));
    marks.add(new Words(WIDE * 3 / 4, 24, 12, Anchor.MIDDLE, b.toString()));
    marks.add(new Words(WIDE / 2, 256, 12, Anchor.MIDDLE, heading(verdict)));
    String seals = JointText.sealWords(verdict);
    if (!seals.isEmpty()) {
      // A pointer from the words to every place that seals.
      for (EndShape shape : sealing(left, right)) {
        double[] from = shape.sealingPlace(shape == left ? leftPlace : rightPlace);
        marks.add(new Line(from[0], from[1], WIDE / 2, 224, 0.6));
      }
      marks.add(new Words(WIDE / 2, 235, 10, Anchor.MIDDLE, seals));
    }
    int y = 272;
    for (String line : Lettering.sans().wrap(verdict.reason(), 8, WIDE - 40)) {
      marks.add(new Words(WIDE / 2, y, 8, Anchor.MIDDLE, line));
      y += 10;
    }
    String scaleWords =
        left.drawnByFigures() && right.drawnByFigures()
            ? "Diameters and pitches to one scale; walls are only sketched."
            : "An end without published figures is drawn by its nominal size.";
    marks.add(new Words(WIDE / 2, y + 4, 7, Anchor.MIDDLE, scaleWords));
    return new Picture(WIDE, Math.max(HIGH, y + 12.0), marks);
  }

  private static List<EndShape> sealing(EndShape left, EndShape right) {
    List<EndShape> gasketed =
        List.of(left, right).stream().filter(s -> s.end().carriesGasket()).toList();
    return gasketed.isEmpty() ? List.of(left, right) : gasketed;
  }
}
