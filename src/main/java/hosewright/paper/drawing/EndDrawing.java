package hosewright.paper.drawing;

import hosewright.paper.drawing.EndShape.Place;
import hosewright.paper.page.Picture;
import hosewright.paper.page.Picture.Anchor;
import hosewright.paper.page.Picture.Line;
import hosewright.paper.page.Picture.Mark;
import hosewright.paper.page.Picture.Words;
import hosewright.paper.page.SvgPicture;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** One end, to scale: its diameter and its threads. */
public final class EndDrawing {
  private static final double WIDE = 420;
  private static final double HIGH = 260;
  private static final double LARGEST = 170;

  private EndDrawing() {}

  /**
   * Diameter and one inch of threads along one ruler, in letters.
   *
   * @param width columns to use, 50 or more
   */
  public static String text(End end, int width) {
    return EndRuler.of(end, Math.max(50, width));
  }

  /** The end cut along its axis, as an SVG document readable in black and white. */
  public static String svg(End end) {
    return SvgPicture.of(picture(end), end.toString());
  }

  private static Picture picture(End end) {
    EndShape shape = EndShape.of(end);
    double scale = LARGEST / (2 * shape.outerRadiusIn());
    Place place = new Place(WIDE * 0.6, 130, scale, true);
    List<Mark> marks = new ArrayList<>(shape.marks(place));
    marks.add(new Words(WIDE / 2, 22, 13, Anchor.MIDDLE, end.toString()));
    double x = place.x() + 46;
    double top = place.down(shape.diameterIn() / 2, true);
    double bottom = place.down(shape.diameterIn() / 2, false);
    marks.add(new Line(x, top, x, bottom, 0.6));
    for (double y : new double[] {top, bottom}) {
      marks.add(new Line(x - 40, y, x + 5, y, 0.4));
    }
    List<String> words = words(shape);
    for (int i = 0; i < words.size(); i++) {
      marks.add(new Words(x + 9, place.y() - 3 + 12 * i, 9, Anchor.START, words.get(i)));
    }
    marks.add(new Words(WIDE / 2, HIGH - 12, 8, Anchor.MIDDLE, scaleWords(shape)));
    return new Picture(WIDE, HIGH, marks);
  }

  private static List<String> words(EndShape shape) {
    if (!shape.drawnByFigures()) {
      return List.of("no figures held:", "measure it");
    }
    if (shape.pitchIn() == 0) {
      return List.of(
          String.format(Locale.ROOT, "%.0f mm", shape.diameterIn() * 25.4), "over the lugs");
    }
    return List.of(
        String.format(Locale.ROOT, "%.4f in", shape.diameterIn()),
        String.format(Locale.ROOT, "%s threads", EndRuler.plain(1 / shape.pitchIn())),
        "in one inch");
  }

  private static String scaleWords(EndShape shape) {
    return shape.drawnByFigures()
        ? "Diameter and pitch to scale with each other; walls are only sketched."
        : "Not to scale: drawn by its nominal size.";
  }
}
