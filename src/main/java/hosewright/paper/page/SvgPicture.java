package hosewright.paper.page;

import hosewright.paper.page.Picture.Disc;
import hosewright.paper.page.Picture.Line;
import hosewright.paper.page.Picture.Mark;
import hosewright.paper.page.Picture.Outline;
import hosewright.paper.page.Picture.Words;
import hosewright.problem.PlainText;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import org.apache.commons.text.StringEscapeUtils;

/** A picture as an SVG document. */
public final class SvgPicture {
  private SvgPicture() {}

  public static String of(Picture picture, String title) {
    StringBuilder svg = new StringBuilder();
    String size = number(picture.width()) + "\" height=\"" + number(picture.height());
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + size + "\" viewBox=\"0 0 ")
        .append(number(picture.width()) + " " + number(picture.height()) + "\"")
        .append(" font-family=\"Liberation Sans, Arial, sans-serif\" role=\"img\">\n")
        .append("<title>" + escaped(title) + "</title>\n")
        .append("<rect width=\"100%\" height=\"100%\" fill=\"white\"/>\n");
    picture.marks().forEach(mark -> svg.append(element(mark)).append('\n'));
    return svg.append("</svg>\n").toString();
  }

  private static String element(Mark mark) {
    if (mark instanceof Line line) {
      return "<line"
          + attributes("x1", line.x1(), "y1", line.y1(), "x2", line.x2(), "y2", line.y2())
          + stroke(line.strokePt())
          + "/>";
    }
    if (mark instanceof Outline outline) {
      return "<polygon points=\""
          + points(outline.corners())
          + "\""
          + stroke(outline.strokePt())
          + fill(outline.shade())
          + "/>";
    }
    if (mark instanceof Disc disc) {
      return "<circle"
          + attributes("cx", disc.x(), "cy", disc.y(), "r", disc.radius())
          + stroke(disc.strokePt())
          + fill(disc.shade())
          + "/>";
    }
    Words words = (Words) mark;
    String anchor = words.anchor().name().toLowerCase(Locale.ROOT);
    return "<text"
        + attributes("x", words.x(), "y", words.y(), "font-size", words.sizePt())
        + " text-anchor=\""
        + anchor
        + "\">"
        + escaped(words.text())
        + "</text>";
  }

  private static String attributes(Object... namesAndNumbers) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < namesAndNumbers.length; i += 2) {
      text.append(
          " " + namesAndNumbers[i] + "=\"" + number((Double) namesAndNumbers[i + 1]) + "\"");
    }
    return text.toString();
  }

  private static String points(List<Double> corners) {
    StringJoiner points = new StringJoiner(" ");
    for (int i = 0; i < corners.size(); i += 2) {
      points.add(number(corners.get(i)) + "," + number(corners.get(i + 1)));
    }
    return points.toString();
  }

  private static String stroke(double widthPt) {
    return " stroke=\"black\" stroke-width=\"" + number(widthPt) + "\"";
  }

  private static String fill(double shade) {
    int level = (int) Math.round(shade * 255);
    return " fill=\"rgb(" + level + "," + level + "," + level + ")\"";
  }

  private static String escaped(String text) {
    return StringEscapeUtils.escapeXml10(PlainText.spelt(text));
  }

  private static String number(double value) {
    return new DecimalFormat("0.##", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(value);
  }
}
