package hosewright.paper.page;

import java.util.ArrayList;
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

  /** Pictures one below another. */
  public static Picture below(List<Picture> pictures) {
    List<Mark> all = new ArrayList<>();
    double height = 0;
    double width = 0;
    for (Picture picture : pictures) {
      for (Mark mark : picture.marks) {
        all.add(mark.lower(height));
      }
      height += picture.height;
      width = Math.max(width, picture.width);
    }
    return new Picture(width, height, all);
  }

  /** One thing drawn. Shades run from 0 for black to 1 for white. */
  public sealed interface Mark {
    /** The same farther down. */
    Mark lower(double by);
  }

  public record Line(double x1, double y1, double x2, double y2, double strokePt) implements Mark {
    @Override
    public Line lower(double by) {
      return new Line(x1, y1 + by, x2, y2 + by, strokePt);
    }
  }

  /** A closed outline: x and y of each corner in turn. */
  public record Outline(List<Double> corners, double strokePt, double shade) implements Mark {
    public Outline {
      corners = List.copyOf(corners);
    }

    @Override
    public Outline lower(double by) {
      List<Double> lower = new ArrayList<>();
      for (int i = 0; i < corners.size(); i++) {
        lower.add(corners.get(i) + (i % 2 == 0 ? 0 : by));
      }
      return new Outline(lower, strokePt, shade);
    }

    public static Outline box(
        double x, double y, double width, double height, double strokePt, double shade) {
      return new Outline(
          List.of(x, y, x + width, y, x + width, y + height, x, y + height), strokePt, shade);
    }
  }

  public record Disc(double x, double y, double radius, double strokePt, double shade)
      implements Mark {
    @Override
    public Disc lower(double by) {
      return new Disc(x, y + by, radius, strokePt, shade);
    }
  }

  /** One line of text; y is its baseline. */
  public record Words(double x, double y, double sizePt, Anchor anchor, String text)
      implements Mark {

    @Override
    public Words lower(double by) {
      return new Words(x, y + by, sizePt, anchor, text);
    }

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
