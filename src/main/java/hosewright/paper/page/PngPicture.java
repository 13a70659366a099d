package hosewright.paper.page;

import hosewright.paper.page.Picture.Disc;
import hosewright.paper.page.Picture.Line;
import hosewright.paper.page.Picture.Mark;
import hosewright.paper.page.Picture.Outline;
import hosewright.paper.page.Picture.Words;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;

/** A picture as a PNG file, drawn without a screen and without the machine's fonts. */
public final class PngPicture {
  private PngPicture() {}

  /**
   * @param pixelsPerPoint 2 or more prints well
   */
  public static byte[] of(Picture picture, double pixelsPerPoint) {
    BufferedImage image =
        new BufferedImage(
            (int) Math.ceil(picture.width() * pixelsPerPoint),
            (int) Math.ceil(picture.height() * pixelsPerPoint),
            BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    graphics.scale(pixelsPerPoint, pixelsPerPoint);
    picture.marks().forEach(mark -> draw(graphics, mark));
    graphics.dispose();
    return encoded(image);
  }

  private static void draw(Graphics2D graphics, Mark mark) {
    if (mark instanceof Line line) {
      stroke(
          graphics, new Line2D.Double(line.x1(), line.y1(), line.x2(), line.y2()), line.strokePt());
    } else if (mark instanceof Outline outline) {
      paint(graphics, path(outline.corners()), outline.strokePt(), outline.shade());
    } else if (mark instanceof Disc disc) {
      double across = 2 * disc.radius();
      Shape circle =
          new Ellipse2D.Double(disc.x() - disc.radius(), disc.y() - disc.radius(), across, across);
      paint(graphics, circle, disc.strokePt(), disc.shade());
    } else if (mark instanceof Words words) {
      graphics.setColor(Color.BLACK);
      graphics.fill(
          Lettering.sans().outline(words.text(), words.sizePt(), words.left(), words.y()));
    }
  }

  private static void paint(Graphics2D graphics, Shape shape, double strokePt, double shade) {
    graphics.setColor(new Color((float) shade, (float) shade, (float) shade));
    graphics.fill(shape);
    stroke(graphics, shape, strokePt);
  }

  private static void stroke(Graphics2D graphics, Shape shape, double strokePt) {
    graphics.setColor(Color.BLACK);
    graphics.setStroke(new BasicStroke((float) strokePt));
    graphics.draw(shape);
  }

  private static Shape path(List<Double> corners) {
    Path2D path = new Path2D.Double();
    path.moveTo(corners.get(0), corners.get(1));
    for (int i = 2; i < corners.size(); i += 2) {
      path.lineTo(corners.get(i), corners.get(i + 1));
    }
    path.closePath();
    return path;
  }

  private static byte[] encoded(BufferedImage image) {
    try {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      ImageIO.setUseCache(false);
      ImageIO.write(image, "png", bytes);
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
