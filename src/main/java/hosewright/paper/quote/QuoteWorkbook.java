package hosewright.paper.quote;

import hosewright.paper.page.Paper;
import hosewright.paper.sheet.Described;
import hosewright.paper.sheet.Looks;
import hosewright.paper.sheet.Page;
import hosewright.paper.sheet.SheetNames;
import hosewright.paper.sheet.SheetSetup;
import hosewright.paper.sheet.StableZip;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import hosewright.quote.terms.Dealer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.joda.money.CurrencyUnit;

/**
 * A quote as its buyer's workbook (.xlsx), whose figures are live: change a quantity and the price
 * break, the line, the tax and the total follow; change the flow and the pressures follow.
 *
 * <p>The same quote always gives the same bytes.
 */
public final class QuoteWorkbook {
  private final Quote quote;
  private final Dealer dealer;
  private final Paper paper;
  private final XSSFWorkbook workbook;
  private final Looks looks;

  private QuoteWorkbook(Quote quote, Dealer dealer, Paper paper, XSSFWorkbook workbook) {
    this.quote = quote;
    this.dealer = dealer;
    this.paper = paper;
    this.workbook = workbook;
    this.looks = new Looks(workbook, quote.total().getCurrencyUnit());
  }

  /**
   * Writes the workbook. The stream stays open.
   *
   * @throws IllegalStateException when the recalculated total is not the quote's: such a paper must
   *     never reach a buyer
   */
  public static void write(Quote quote, Dealer dealer, Paper paper, OutputStream out)
      throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      new QuoteWorkbook(quote, dealer, paper, workbook).fill();
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      workbook.write(bytes);
      StableZip.copy(bytes.toByteArray(), out);
    }
  }

  private void fill() {
    // A formula may use a name that a later row defines; evaluating them all reads them anyway.
    workbook.setCellFormulaValidation(false);
    workbook.createSheet(SheetNames.QUOTE);
    laid().forEach(group -> SheetNames.OF_A_GROUP.forEach(one -> createSheet(one, group)));
    new QuoteSheet(page(SheetNames.QUOTE, QuoteSheet.WIDTHS), quote, dealer).write();
    laid().forEach(this::technical);
    XSSFFormulaEvaluator.evaluateAllFormulaCells(workbook);
    TotalsCheck.holds(workbook, quote);
    ProfileChart.draw(workbook);
    properties();
  }

  /** The groups that have technical sheets. */
  private List<Group> laid() {
    return quote.groups().stream().filter(Group::laid).toList();
  }

  private void createSheet(String sheet, Group group) {
    workbook.createSheet(nameOf(sheet, group));
  }

  private String nameOf(String sheet, Group group) {
    return quote.groups().size() == 1 ? sheet : sheet + " " + group.number();
  }

  private void technical(Group group) {
    new JointsSheet(page(SheetNames.JOINTS, group, JointsSheet.WIDTHS)).write(quote, group);
    Page hydraulics = page(SheetNames.HYDRAULICS, group, HydraulicsSheet.WIDTHS);
    if (quote.groups().size() > 1) {
      hydraulics.withNamesOfItsOwn();
    }
    new HydraulicsSheet(hydraulics, quote, group).write();
    new ChecksSheet(page(SheetNames.CHECKS, group, ChecksSheet.WIDTHS)).write(quote, group);
  }

  private Page page(String sheet, int... widths) {
    return page(sheet, quote.groups().get(0), widths);
  }

  private Page page(String kind, Group group, int... widths) {
    boolean landscape = SheetNames.WIDE.contains(kind);
    String sheet = SheetNames.OF_A_GROUP.contains(kind) ? nameOf(kind, group) : kind;
    SheetSetup.printed(
        workbook.getSheet(sheet),
        paper,
        landscape,
        dealer.name(),
        "Quote "
            + quote.number()
            + ", revision "
            + quote.revision()
            + DraftMark.of(quote).map(mark -> ", draft").orElse(""));
    return new Page(workbook.getSheet(sheet), looks, widths);
  }

  private void properties() {
    new Described(
            "Quote " + quote.number() + ", revision " + quote.revision(),
            quote.basis().title(),
            dealer.name(),
            Optional.of(quote.validity().madeAt()))
        .in(workbook);
  }

  static CurrencyUnit currency(Quote quote) {
    return quote.total().getCurrencyUnit();
  }
}
