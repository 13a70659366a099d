package hosewright.paper.page;

import hosewright.paper.page.Picture.Disc;
import hosewright.paper.page.Picture.Line;
import hosewright.paper.page.Picture.Mark;
import hosewright.paper.page.Picture.Outline;
import hosewright.paper.page.Picture.Words;
import hosewright.problem.PlainText;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/** Pages of a PDF filled from top to bottom with text, rules and pictures; y grows downwards. */
public final class PdfSheet implements AutoCloseable {
  static final double MARGIN = 40;
  private static final double FOOT = 28;

  /** What the foot takes above its baseline, and a little air. */
  private static final double ABOVE_FOOT = 13;

  private final PDDocument document;
  private final PDFont font;
  private final PDRectangle size;
  private final List<PDPage> pages = new ArrayList<>();
  private PDPageContentStream content;
  private double y;

  public PdfSheet(PDDocument document, Paper paper) throws IOException {
    this.document = document;
    this.size = paper == Paper.A4 ? PDRectangle.A4 : PDRectangle.LETTER;
    this.font = PDType0Font.load(document, Lettering.ofAPaper(), true);
    newPage();
  }

  public double width() {
    return size.getWidth() - 2 * MARGIN;
  }

  public void down(double points) {
    y += points;
  }

  /** Whether so much still fits on this page. */
  public boolean hasRoom(double points) {
    return y + points <= size.getHeight() - FOOT - ABOVE_FOOT;
  }

  public void newPage() throws IOException {
    if (content != null) {
      content.close();
    }
    PDPage page = new PDPage(size);
    document.addPage(page);
    pages.add(page);
    content = new PDPageContentStream(document, page);
    y = MARGIN;
  }

  /** One line of text, its baseline a text's height below the present y, x from the margin. */
  public void text(String text, double x, double sizePt, boolean bold) throws IOException {
    show(content, MARGIN + x, size.getHeight() - y - sizePt, sizePt, bold, text);
  }

  /** One line of text that ends at x from the margin. */
  public void textEndingAt(String text, double x, double sizePt, boolean bold) throws IOException {
    text(text, x - Lettering.sans().widthPt(shown(text), sizePt), sizePt, bold);
  }

  public void rule(double fromX, double toX) throws IOException {
    content.setLineWidth(0.6f);
    content.moveTo((float) (MARGIN + fromX), (float) (size.getHeight() - y));
    content.lineTo((float) (MARGIN + toX), (float) (size.getHeight() - y));
    content.stroke();
  }

  /** Draws a picture as wide as the page allows and moves below it. */
  public void picture(Picture picture) throws IOException {
    double scale = width() / picture.width();
    for (Mark mark : picture.marks()) {
      draw(mark, scale);
    }
    y += picture.height() * scale;
  }

  private void draw(Mark mark, double scale) throws IOException {
    if (mark instanceof Line line) {
      content.setLineWidth((float) (line.strokePt() * scale));
      content.moveTo(across(line.x1(), scale), up(line.y1(), scale));
      content.lineTo(across(line.x2(), scale), up(line.y2(), scale));
      content.stroke();
    } else if (mark instanceof Outline outline) {
      List<Double> corners = outline.corners();
      content.moveTo(across(corners.get(0), scale), up(corners.get(1), scale));
      for (int i = 2; i < corners.size(); i += 2) {
        content.lineTo(across(corners.get(i), scale), up(corners.get(i + 1), scale));
      }
      content.closePath();
      fill(outline.shade(), outline.strokePt() * scale);
    } else if (mark instanceof Disc disc) {
      circle(disc, scale);
      fill(disc.shade(), disc.strokePt() * scale);
    } else if (mark instanceof Words words) {
      double sizePt = words.sizePt() * scale;
      show(content, across(words.left(), scale), up(words.y(), scale), sizePt, false, words.text());
    }
  }

  private void fill(double shade, double strokePt) throws IOException {
    content.setLineWidth((float) strokePt);
    content.setNonStrokingColor((float) shade);
    content.fillAndStroke();
    content.setNonStrokingColor(0f);
  }

  /** Four curves, each within a thousandth of the arc. */
  private void circle(Disc disc, double scale) throws IOException {
    double arm = disc.radius() * 0.5523;
    double r = disc.radius();
    double x = disc.x();
    double top = disc.y();
    content.moveTo(across(x + r, scale), up(top, scale));
    curve(x + r, top + arm, x + arm, top + r, x, top + r, scale);
    curve(x - arm, top + r, x - r, top + arm, x - r, top, scale);
    curve(x - r, top - arm, x - arm, top - r, x, top - r, scale);
    curve(x + arm, top - r, x + r, top - arm, x + r, top, scale);
    content.closePath();
  }

  private void curve(double x1, double y1, double x2, double y2, double x3, double y3, double scale)
      throws IOException {
    content.curveTo(
        across(x1, scale),
        up(y1, scale),
        across(x2, scale),
        up(y2, scale),
        across(x3, scale),
        up(y3, scale));
  }

  private float across(double x, double scale) {
    return (float) (MARGIN + x * scale);
  }

  private float up(double down, double scale) {
    return (float) (size.getHeight() - y - down * scale);
  }

  private void show(
      PDPageContentStream to, double x, double baseline, double sizePt, boolean bold, String text)
      throws IOException {
    to.beginText();
    to.setFont(font, (float) sizePt);
    // The font that travels with the library has one weight; a thin outline makes the other.
    to.setRenderingMode(bold ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
    to.setLineWidth((float) (sizePt * 0.03));
    to.newLineAtOffset((float) x, (float) baseline);
    to.showText(shown(text));
    to.endText();
  }

  /** Text with what the font lacks replaced, so that no odd letter stops a paper. */
  public static String shown(String text) {
    return PlainText.spelt(text)
        .codePoints()
        .map(c -> Character.isWhitespace(c) ? ' ' : Lettering.sans().canShow(c) ? c : '?')
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  /** Ends the last page and numbers them all. */
  public void finish(String footer) throws IOException {
    content.close();
    for (int i = 0; i < pages.size(); i++) {
      String count = "Page " + (i + 1) + " of " + pages.size();
      try (PDPageContentStream foot =
          new PDPageContentStream(document, pages.get(i), AppendMode.APPEND, true, true)) {
        double right = size.getWidth() - MARGIN - Lettering.sans().widthPt(count, 8);
        show(foot, MARGIN, FOOT, 8, false, footer);
        show(foot, right, FOOT, 8, false, count);
      }
    }
  }

  @Override
  public void close() throws IOException {
    content.close();
  }
}
