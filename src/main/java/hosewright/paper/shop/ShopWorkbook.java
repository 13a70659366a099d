package hosewright.paper.shop;

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
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * What the house needs of a quote and its buyer does not, as a workbook (.xlsx).
 *
 * <p>The same quote always gives the same bytes.
 */
public final class ShopWorkbook {
  private final Quote quote;
  private final Dealer dealer;
  private final Paper paper;
  private final XSSFWorkbook workbook;
  private final Looks looks;

  private ShopWorkbook(Quote quote, Dealer dealer, Paper paper, XSSFWorkbook workbook) {
    this.quote = quote;
    this.dealer = dealer;
    this.paper = paper;
    this.workbook = workbook;
    this.looks = new Looks(workbook, quote.total().getCurrencyUnit());
  }

  /** Writes the workbook. The stream stays open. */
  public static void write(Quote quote, Dealer dealer, Paper paper, OutputStream out)
      throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      new ShopWorkbook(quote, dealer, paper, workbook).fill();
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      workbook.write(bytes);
      StableZip.copy(bytes.toByteArray(), out);
    }
  }

  private void fill() {
    workbook.setCellFormulaValidation(false);
    new PickingSheet(page(SheetNames.PICKING, true, PickingSheet.WIDTHS)).write(quote);
    new BreaksSheet(page(SheetNames.BREAKS, false, BreaksSheet.WIDTHS)).write(quote);
    for (Group group : quote.groups()) {
      if (AlternativesSheet.hasAny(group.plan())) {
        new AlternativesSheet(
                page(of(group, SheetNames.ALTERNATIVES), true, AlternativesSheet.WIDTHS))
            .write(quote, group);
      }
      if (FrictionSheet.hasAny(group.plan())) {
        Page page = page(of(group, SheetNames.FRICTION), false, FrictionSheet.WIDTHS);
        if (quote.groups().size() > 1) {
          page.withNamesOfItsOwn();
        }
        new FrictionSheet(page, group.plan()).write(behind(quote, group));
      }
    }
    XSSFFormulaEvaluator.evaluateAllFormulaCells(workbook);
    new Described(
            title(), quote.basis().title(), dealer.name(), Optional.of(quote.validity().madeAt()))
        .in(workbook);
  }

  private String title() {
    return "Quote " + quote.number() + ", revision " + quote.revision() + ", for the house only";
  }

  private String of(Group group, String sheet) {
    return quote.groups().size() == 1 ? sheet : sheet + " " + group.number();
  }

  private Page page(String sheet, boolean landscape, int... widths) {
    workbook.createSheet(sheet);
    SheetSetup.printed(workbook.getSheet(sheet), paper, landscape, dealer.name(), title());
    return new Page(workbook.getSheet(sheet), looks, widths);
  }

  /** Which group a sheet is about, behind its title; nothing where there is one only. */
  static String behind(Quote quote, Group group) {
    return quote.groups().size() == 1 ? "" : ": " + group.heading().words();
  }
}
