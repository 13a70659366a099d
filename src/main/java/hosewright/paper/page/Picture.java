package hosewright.paper.page;

import java.util.List;

/**
 * A drawing as plain marks, which each kind of paper renders in its own way.
 *
 * @param width in points; x grows to the right
 * @param height in points; y grows downwards
 */
public record Picture(double width, double height, List<Mark> marks) {

  public Picture {
    marks = List.copyOf(marks);
  }

  /** One thing drawn. Shades run from 0 for black to 1 for white. */
  public sealed interface Mark {}

  public record Line(double x1, double y1, double x2, double y2, double strokePt) implements Mark {}

  /** A closed outline: x and y of each corner in turn. */
  public record Outline(List<Double> corners, double strokePt, double shade) implements Mark {
    public Outline {
      corners = List.copyOf(corners);
    }

    public static Outline box(
        double x, double y, double width, double height, double strokePt, double shade) {
      return new Outline(
          List.of(x, y, x + width, y, x + width, y + height, x, y + height), strokePt, shade);
    }
  }

  public record Disc(double x, double y, double radius, double strokePt, double shade)
      implements Mark {}

  /** One line of text; y is its baseline. */
  public record Words(double x, double y, double sizePt, Anchor anchor, String text)
      implements Mark {

    /** Where the text starts, points. */
    double left() {
      double width = Lettering.sans().widthPt(text, sizePt);
      return switch (anchor) {
        case START -> x;
        case MIDDLE -> x - width / 2;
        case END -> x - width;
      };
    }
  }

  /** Which part of a line of text stands at its x. */
  public enum Anchor {
    START,
    MIDDLE,
    END
  }
}
