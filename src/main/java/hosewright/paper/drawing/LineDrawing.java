package hosewright.paper.drawing;

import hosewright.line.model.LinePlan;
import hosewright.measure.UnitSystem;
import hosewright.paper.page.Picture;
import hosewright.paper.page.PngPicture;
import hosewright.paper.page.SvgPicture;

/**
 * The line from source to appliance in true order, not to scale: parts, the ends they carry, and
 * how each joint is kept tight.
 */
public final class LineDrawing {
  private static final double PIXELS_PER_POINT = 2.5;

  private LineDrawing() {}

  /** The drawing as an SVG document, readable in black and white. */
  public static String svg(LinePlan plan) {
    return SvgPicture.of(LinePicture.of(plan), plan.summary());
  }

  /** The drawing as a PNG file. */
  public static byte[] png(LinePlan plan) {
    return png(LinePicture.of(plan));
  }

  /** One of its pieces as a PNG file. */
  public static byte[] png(Picture piece) {
    return PngPicture.of(piece, PIXELS_PER_POINT);
  }

  /**
   * The drawing in letters, for a terminal; plain ASCII as long as the plan's own words are.
   *
   * @param width columns to use, 20 or more
   */
  public static String text(LinePlan plan, int width) {
    return LineText.of(plan, Math.max(20, width));
  }

  /**
   * Where legs part and meet, in letters: nothing of what joins them, which {@link #text} has.
   *
   * @param width columns to use
   */
  public static String legs(LinePlan plan, UnitSystem units, int width) {
    return CourseText.of(plan, units, width);
  }
}
