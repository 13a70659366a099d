package hosewright.paper.page;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * What is drawn on a page of a PDF, read back from the file, in points from its lower left corner.
 *
 * @param lines single strokes
 * @param outlines filled shapes
 */
public record PdfPage(List<Path> lines, List<Path> outlines) {

  /** Corners as x and y in turn, drawn with a stroke of this width. */
  public record Path(double strokePt, List<double[]> corners) {
    public double x(int corner) {
      return corners.get(corner)[0];
    }

    public double y(int corner) {
      return corners.get(corner)[1];
    }

    public double left() {
      return corners.stream().mapToDouble(c -> c[0]).min().orElseThrow();
    }

    public double right() {
      return corners.stream().mapToDouble(c -> c[0]).max().orElseThrow();
    }

    public double bottom() {
      return corners.stream().mapToDouble(c -> c[1]).min().orElseThrow();
    }

    public double top() {
      return corners.stream().mapToDouble(c -> c[1]).max().orElseThrow();
    }
  }

  public static PdfPage of(PDPage page) throws IOException {
    List<Path> lines = new ArrayList<>();
    List<Path> outlines = new ArrayList<>();
    List<Double> numbers = new ArrayList<>();
    List<double[]> corners = new ArrayList<>();
    double stroke = 1;
    for (Object token : new PDFStreamParser(page).parse()) {
      if (token instanceof COSNumber number) {
        numbers.add((double) number.floatValue());
      } else if (token instanceof Operator operator) {
        switch (operator.getName()) {
          case "w" -> stroke = numbers.get(0);
          case "m", "l" -> corners.add(new double[] {numbers.get(0), numbers.get(1)});
          case "S" -> take(lines, stroke, corners);
          case "B" -> take(outlines, stroke, corners);
          // Nothing here may move or stretch what is drawn, or the corners are not where they seem.
          case "cm" -> throw new AssertionError("the page is transformed");
          default -> {}
        }
        numbers.clear();
      }
    }
    return new PdfPage(lines, outlines);
  }

  private static void take(List<Path> paths, double stroke, List<double[]> corners) {
    paths.add(new Path(stroke, List.copyOf(corners)));
    corners.clear();
  }
}
