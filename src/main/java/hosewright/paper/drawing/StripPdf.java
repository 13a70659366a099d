package hosewright.paper.drawing;

import hosewright.paper.page.Lettering;
import hosewright.paper.page.Paper;
import hosewright.paper.page.PdfSheet;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * A strip in true size to cut out and wrap round a male thread, for somebody without a caliper:
 * marks at each thread's circumference, combs for counting threads, a bar that proves the printer.
 *
 * <p>The same paper always gives the same bytes.
 */
public final class StripPdf {
  private static final String TITLE = "Which thread is it? A strip to cut out";
  private static final double BODY = 9;
  private static final double BETWEEN = 9;

  private static final List<String> STEPS =
      List.of(
          "Print at 100 % (actual size), never fitted to the page. Then measure the bar below: if"
              + " it is not exact, do not use this sheet.",
          "Cut out the pieces and glue them in order, each over the grey tab of the one before,"
              + " edge to edge.",
          "Choose the MALE thread, never the female. Wipe it clean. Lay the strip flat round the"
              + " crests, pull it snug, and bring the edge with the arrow round on top.",
          "Read the mark the edge comes to, and the ruler. Tell both to your dealer, or type the"
              + " ruler's figure behind 'end identify --wrap'.",
          "Hold the combs of the second page against the threads: only one lies flat in all of"
              + " them. Or count the crests in one inch.");

  private static final List<String> CAUTIONS =
      List.of(
          "Worn, dented or painted threads read wrong, mostly small: measure an undamaged place, or"
              + " another coupling of the same kind.",
          "Paper is good to about 1/16 in (2 mm) round. Many threads lie closer together than that:"
              + " one mark proves nothing until the threads are counted too.",
          "The names are sizes of the trade, not measurements. Taper threads (NPT, R) are marked"
              + " for their full end.",
          "Fire threads differ from place to place: ask the local fire service before you buy.");

  private final PdfSheet sheet;
  private final Paper paper;

  private StripPdf(PdfSheet sheet, Paper paper) {
    this.sheet = sheet;
    this.paper = paper;
  }

  /** Writes the PDF. The stream stays open. */
  public static void write(Paper paper, OutputStream out) throws IOException {
    try (PDDocument document = new PDDocument();
        PdfSheet sheet = new PdfSheet(document, paper)) {
      // Without a number of its own the file would be stamped with the clock.
      document.setDocumentId((long) TITLE.hashCode() + paper.ordinal());
      PDDocumentInformation information = new PDDocumentInformation();
      information.setTitle(TITLE);
      document.setDocumentInformation(information);
      document.getDocumentCatalog().setViewerPreferences(inTrueSize());
      new StripPdf(sheet, paper).fill();
      document.save(out);
    }
  }

  /** Asks the printing program not to fit the page, which it may still overrule. */
  private static PDViewerPreferences inTrueSize() {
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    return preferences;
  }

  private void fill() throws IOException {
    sheet.text(TITLE, 0, 14, true);
    sheet.down(22);
    for (int i = 0; i < STEPS.size(); i++) {
      paragraph((i + 1) + ".", STEPS.get(i));
    }
    sheet.down(6);
    sheet.picture(StripPicture.bar(paper, sheet.width()));
    sheet.down(6);
    strip("National and pipe threads", StripMark.national(), "national and pipe threads");
    heading("Take care");
    for (String caution : CAUTIONS) {
      paragraph("-", caution);
    }
    sheet.newPage();
    strip("Regional fire threads of North America", StripMark.regional(), "regional fire threads");
    heading("Combs: threads in one inch");
    for (var count : CombPicture.counts().entrySet()) {
      sheet.picture(CombPicture.of(count.getKey(), count.getValue(), sheet.width()));
      sheet.down(3);
    }
    sheet.finish("Measure the male, never the female. Sizes are names, not measurements.");
  }

  private void strip(String heading, List<StripMark> marks, String name) throws IOException {
    heading(heading);
    StripPicture strip = new StripPicture(paper, sheet.width(), marks, name);
    for (int piece = 0; piece < strip.pieces(); piece++) {
      sheet.picture(strip.piece(piece));
      sheet.down(BETWEEN);
    }
  }

  private void heading(String text) throws IOException {
    sheet.down(4);
    sheet.text(text, 0, 10.5, true);
    sheet.down(18);
  }

  private void paragraph(String sign, String text) throws IOException {
    sheet.text(sign, 4, BODY, false);
    for (String line : Lettering.sans().wrap(text, BODY, sheet.width() - 18)) {
      sheet.text(line, 18, BODY, false);
      sheet.down(BODY * 1.25);
    }
    sheet.down(2);
  }
}
