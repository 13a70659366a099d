package hosewright.paper.quote;

import hosewright.paper.drawing.LinePicture;
import hosewright.paper.page.Lettering;
import hosewright.paper.page.Paper;
import hosewright.paper.page.PdfSheet;
import hosewright.paper.page.Picture;
import hosewright.paper.page.PrintedMoney;
import hosewright.problem.PlainText;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import hosewright.quote.terms.Dealer;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.joda.money.Money;

/**
 * A quote as a PDF, for buyers without a spreadsheet program: what the workbook's first sheet says.
 *
 * <p>The same quote always gives the same bytes.
 */
public final class QuotePdf {
  private static final double BODY = 9;

  /** Share of the width that dealer and customer stand in. */
  private static final double HEAD_SHARE = 0.62;

  private static final double LINE = BODY * 1.3;

  /** Terms and cautions. */
  private static final double NOTE = 8;

  private static final double INDENT = 14;
  private static final double NOTE_LINE = NOTE * 1.25;
  private static final double TOTALS_PT = 6 * LINE;
  private static final double SIGNATURE_PT = 56;

  private final Quote quote;
  private final Dealer dealer;
  private final PdfSheet sheet;
  private final double wide;

  private QuotePdf(Quote quote, Dealer dealer, PdfSheet sheet) {
    this.quote = quote;
    this.dealer = dealer;
    this.sheet = sheet;
    this.wide = sheet.width();
  }

  /** Writes the PDF. The stream stays open. */
  public static void write(Quote quote, Dealer dealer, Paper paper, OutputStream out)
      throws IOException {
    try (PDDocument document = new PDDocument();
        PdfSheet sheet = new PdfSheet(document, paper)) {
      // Without a number of its own the file would be stamped with the clock.
      document.setDocumentId((long) (quote.number() + "/" + quote.revision()).hashCode());
      document.setDocumentInformation(properties(quote, dealer));
      new QuotePdf(quote, dealer, sheet).fill();
      document.save(out);
    }
  }

  private static PDDocumentInformation properties(Quote quote, Dealer dealer) {
    PDDocumentInformation information = new PDDocumentInformation();
    information.setTitle("Quote " + quote.number() + ", revision " + quote.revision());
    information.setAuthor(PlainText.spelt(dealer.name()));
    Calendar made = GregorianCalendar.from(quote.validity().madeAt().atZone(ZoneOffset.UTC));
    information.setCreationDate(made);
    information.setModificationDate(made);
    return information;
  }

  private void fill() throws IOException {
    head();
    sheet.down(4);
    heading(quote.basis().title());
    if (quote.groups().size() == 1) {
      Group only = quote.groups().get(0);
      purpose(only);
      new PdfLines(sheet, quote).write(quote.lines(), TOTALS_PT);
      totals();
    } else {
      paragraph("A purchase of " + quote.groups().size() + " groups.", 0);
      groups(quote.groups().stream().filter(group -> !group.optional()).toList());
      totals();
      besides();
    }
    for (Map.Entry<String, List<String>> part : PrintedTerms.sections(quote).entrySet()) {
      section(part.getKey(), part.getValue());
    }
    signature();
    sheet.finish(
        "Quote "
            + quote.number()
            + ", revision "
            + quote.revision()
            + DraftMark.of(quote).map(mark -> ", " + mark).orElse(""));
  }

  private void purpose(Group group) throws IOException {
    paragraph(GroupWords.summary(group), 0);
    if (group.laid()) {
      for (Picture piece : LinePicture.pieces(group.plan())) {
        keepTogether(piece.height() * wide / piece.width());
        sheet.picture(piece);
      }
    }
    sheet.down(6);
  }

  /** How high the drawing of a group stands, points; of one in pieces the first. */
  private double drawn(Group group) {
    if (!group.laid()) {
      return 0;
    }
    Picture drawing = LinePicture.pieces(group.plan()).get(0);
    return drawing.height() * wide / drawing.width();
  }

  private void groups(List<Group> groups) throws IOException {
    PdfLines lines = new PdfLines(sheet, quote);
    for (Group group : groups) {
      sheet.down(8);
      keepTogether(drawn(group) + 7 * LINE);
      heading(group.number() + ". " + group.heading().words());
      purpose(group);
      lines.write(quote.lines(group), 2 * LINE);
      lines.subtotal(group);
    }
  }

  private void besides() throws IOException {
    List<Group> optional = quote.groups().stream().filter(Group::optional).toList();
    if (!optional.isEmpty()) {
      sheet.down(8);
      keepTogether(drawn(optional.get(0)) + 10 * LINE);
      heading("You may also have, not in the total");
      groups(optional);
    }
  }

  private void head() throws IOException {
    sheet.text(dealer.name(), 0, 16, true);
    sheet.textEndingAt(
        "Total " + PrintedMoney.words(quote.total()) + quote.besideTotal(), wide, 12, true);
    sheet.down(24);
    List<HeadLine> left =
        Stream.concat(
                Stream.of(
                        String.join(", ", dealer.addressLines()),
                        dealer.phone() + "   " + dealer.email(),
                        dealer.note(),
                        "")
                    .flatMap(text -> headLines(text, false)),
                Stream.concat(
                    headLines("For " + quote.customer().name(), true),
                    headLines(quote.customer().address(), false)))
            .toList();
    List<HeadLine> right =
        Stream.concat(
                DraftMark.of(quote).map(mark -> new HeadLine(mark, true)).stream(),
                Stream.of(
                        "Quote " + quote.number(),
                        "Revision "
                            + quote.revision()
                            + " ("
                            + quote.status().name().toLowerCase(Locale.ROOT)
                            + ")",
                        "Date " + quote.validity().date(),
                        "Valid until " + quote.validity().validUntil(),
                        "Lead time: " + PrintedTerms.lead(quote))
                    .map(text -> new HeadLine(text, false)))
            .toList();
    for (int i = 0; i < Math.max(left.size(), right.size()); i++) {
      if (i < left.size()) {
        sheet.text(left.get(i).text(), 0, BODY, left.get(i).bold());
      }
      if (i < right.size()) {
        sheet.textEndingAt(right.get(i).text(), wide, BODY, right.get(i).bold());
      }
      sheet.down(LINE);
    }
  }

  /** A line of what stands beside the quote's number and dates. */
  private record HeadLine(String text, boolean bold) {}

  /** A long note must not run into the quote's number and dates beside it. */
  private Stream<HeadLine> headLines(String text, boolean bold) {
    return Lettering.sans().wrap(text, BODY, wide * HEAD_SHARE).stream()
        .map(line -> new HeadLine(line, bold));
  }

  private void totals() throws IOException {
    keepTogether(TOTALS_PT);
    sheet.down(4);
    total("Subtotal", quote.totals().subtotal(), false);
    total(
        quote.totals().charging().freightTaxed() ? "Freight (taxed)" : "Freight",
        quote.totals().knownFreight().map(PrintedMoney::figure).orElse("to be quoted"),
        false);
    String percent =
        quote
            .totals()
            .charging()
            .taxRate()
            .multiply(BigDecimal.valueOf(100))
            .stripTrailingZeros()
            .toPlainString();
    total("Tax " + percent + " %", quote.totals().tax(), false);
    sheet.rule(wide - 190, wide);
    sheet.down(2);
    total(
        "Total " + quote.total().getCurrencyUnit().getCode() + quote.besideTotal(),
        quote.total(),
        true);
  }

  private void total(String label, Money money, boolean bold) throws IOException {
    total(label, PrintedMoney.figure(money), bold);
  }

  private void total(String label, String figure, boolean bold) throws IOException {
    sheet.textEndingAt(label, wide - 90, BODY, bold);
    sheet.textEndingAt(figure, wide - PdfLines.TAXED_WIDTH, BODY, bold);
    sheet.down(LINE);
  }

  private void section(String heading, List<String> sentences) throws IOException {
    if (sentences.isEmpty()) {
      return;
    }
    sheet.down(6);
    heading(heading);
    int last = heading.equals(PrintedTerms.CAUTIONS) ? sentences.size() - 1 : sentences.size();
    for (int i = 0; i < sentences.size(); i++) {
      List<String> lines =
          Lettering.sans().wrap(PdfSheet.shown(sentences.get(i)), NOTE, wide - INDENT);
      // No page begins with the place to sign, nor with the end of a sentence.
      keepTogether(lines.size() * NOTE_LINE + (i == last ? SIGNATURE_PT : 0));
      sheet.text("\u2022", 4, NOTE, false);
      for (String line : lines) {
        keepTogether(NOTE_LINE);
        sheet.text(line, INDENT, NOTE, false);
        sheet.down(NOTE_LINE);
      }
    }
  }

  private void heading(String text) throws IOException {
    keepTogether(4 * LINE);
    for (String line : Lettering.sans().wrap(PdfSheet.shown(text), 10.5, wide)) {
      sheet.text(line, 0, 10.5, true);
      sheet.down(12);
    }
    sheet.rule(0, wide);
    sheet.down(2);
  }

  private void paragraph(String text, double indent) throws IOException {
    for (String line : Lettering.sans().wrap(PdfSheet.shown(text), BODY, wide - indent)) {
      keepTogether(LINE);
      sheet.text(line, indent, BODY, false);
      sheet.down(LINE);
    }
  }

  private void signature() throws IOException {
    keepTogether(SIGNATURE_PT);
    sheet.down(8);
    sheet.text("Accepted for " + quote.customer().name(), 0, BODY, true);
    sheet.down(30);
    sheet.rule(0, wide * 0.55);
    sheet.rule(wide * 0.65, wide);
    sheet.down(2);
    sheet.text("Name and authority", 0, 7.5, false);
    sheet.text("Signature and date", wide * 0.65, 7.5, false);
    sheet.down(12);
  }

  private void keepTogether(double points) throws IOException {
    if (!sheet.hasRoom(points)) {
      sheet.newPage();
    }
  }
}
