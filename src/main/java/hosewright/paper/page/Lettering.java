package hosewright.paper.page;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * How wide text runs, and its outlines, from a font that travels with the program.
 *
 * <p>The machine's own fonts are never asked: a server may have none, and papers must come out the
 * same everywhere. Liberation Sans has the widths of Arial, which the workbook names.
 */
public final class Lettering {
  private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private static final Lettering SANS = new Lettering();

  private final TrueTypeFont font;
  private final CmapLookup glyphs;
  private final double unitsPerEm;

  private Lettering() {
    try {
      font = read();
      glyphs = font.getUnicodeCmapLookup();
      unitsPerEm = font.getUnitsPerEm();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static Lettering sans() {
    return SANS;
  }

  /** The font read anew, for a paper that carries its font with it. */
  static TrueTypeFont ofAPaper() throws IOException {
    TrueTypeFont font = read();
    // One letter for "fi" is not as wide as the two that text was fitted to; and the library looks
    // for such pairs anew in every piece of text, which took most of the time of a paper.
    font.setEnableGsub(false);
    return font;
  }

  private static TrueTypeFont read() throws IOException {
    InputStream file = PDDocument.class.getResourceAsStream(FONT);
    return new TTFParser().parse(new RandomAccessReadBuffer(file));
  }

  boolean canShow(int codePoint) {
    return glyphs.getGlyphId(codePoint) > 0;
  }

  /** Width of one line of text, in points. */
  public synchronized double widthPt(String text, double sizePt) {
    try {
      double units = 0;
      for (int codePoint : text.codePoints().toArray()) {
        units += font.getAdvanceWidth(glyphs.getGlyphId(codePoint));
      }
      return units * sizePt / unitsPerEm;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The text broken at spaces into lines that fit; a word wider than a line is broken inside.
   *
   * @param widthPt width of a line, points, above the width of one letter
   */
  public List<String> wrap(String text, double sizePt, double widthPt) {
    List<String> lines = new ArrayList<>();
    for (String paragraph : text.split("\n", -1)) {
      String line = "";
      for (String word : paragraph.split(" ", -1)) {
        String longer = line.isEmpty() ? word : line + " " + word;
        if (widthPt(longer, sizePt) <= widthPt) {
          line = longer;
          continue;
        }
        if (!line.isEmpty()) {
          lines.add(line);
        }
        line = word;
        while (widthPt(line, sizePt) > widthPt && line.length() > 1) {
          int fits = longestFit(line, sizePt, widthPt);
          // An item number is read better where it parts behind a hyphen.
          int hyphen = line.lastIndexOf('-', fits - 1) + 1;
          fits = hyphen > 1 ? hyphen : fits;
          lines.add(line.substring(0, fits));
          line = line.substring(fits);
        }
      }
      lines.add(line);
    }
    return lines;
  }

  private int longestFit(String word, double sizePt, double widthPt) {
    int fits = 1;
    while (fits < word.length() && widthPt(word.substring(0, fits + 1), sizePt) <= widthPt) {
      fits++;
    }
    return fits;
  }

  /** The text's outline with its baseline starting at (x, y), y growing downwards. */
  synchronized Shape outline(String text, double sizePt, double x, double y) {
    try {
      Path2D outline = new Path2D.Double(Path2D.WIND_NON_ZERO);
      double scale = sizePt / unitsPerEm;
      double at = x;
      for (int codePoint : text.codePoints().toArray()) {
        int glyph = glyphs.getGlyphId(codePoint);
        GlyphData data = font.getGlyph().getGlyph(glyph);
        if (data != null) {
          AffineTransform place = new AffineTransform(scale, 0, 0, -scale, at, y);
          outline.append(data.getPath().getPathIterator(place), false);
        }
        at += font.getAdvanceWidth(glyph) * scale;
      }
      return outline;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
