package hosewright.paper.tender;

import hosewright.paper.page.Paper;
import hosewright.paper.sheet.Cells;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Looks;
import hosewright.paper.sheet.SheetSetup;
import hosewright.paper.sheet.StreamedSheet;
import hosewright.paper.tender.TenderWorkbook.Counts;
import hosewright.problem.Problem;
import hosewright.tender.TenderBasis;
import hosewright.tender.TenderResult;
import hosewright.tender.TenderResult.Figures;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** The two sheets of a tender: its jobs, and its rows that could not be read or laid. */
final class TenderSheets {
  private static final String JOBS = "Tender";
  private static final String ERRORS = "Errors";

  private static final int FEASIBLE = 3;
  private static final int GOODS = 14;
  private static final int QUOTE = 16;
  private static final int[] WIDTHS = {7, 14, 30, 12, 40, 28, 8, 8, 22, 9, 9, 10, 10, 10, 14, 24};
  private static final int[] QUOTE_WIDTHS = {
    7, 14, 30, 12, 40, 28, 8, 8, 22, 9, 9, 10, 10, 10, 14, 24, 12, 14
  };
  private static final int[] ERROR_WIDTHS = {7, 14, 16, 16, 24, 60, 44};

  private final TenderBasis basis;
  private final Counts counts;
  private final StreamedSheet jobs;
  private final StreamedSheet errors;
  private int jobsHeading;
  private int errorsHeading;

  TenderSheets(
      TenderBasis basis, String dealer, Paper paper, Counts counts, SXSSFWorkbook workbook) {
    this.basis = basis;
    this.counts = counts;
    Looks looks = new Looks(workbook.getXSSFWorkbook(), counts.goods().getCurrencyUnit());
    this.jobs = sheet(workbook, looks, JOBS, dealer, paper, basis.quoted() ? QUOTE_WIDTHS : WIDTHS);
    this.errors = sheet(workbook, looks, ERRORS, dealer, paper, ERROR_WIDTHS);
  }

  private StreamedSheet sheet(
      SXSSFWorkbook workbook, Looks looks, String name, String dealer, Paper paper, int... widths) {
    SXSSFSheet sheet = workbook.createSheet(name);
    XSSFSheet behind = workbook.getXSSFWorkbook().getSheet(name);
    SheetSetup.printed(behind, paper, true, dealer, "Tender " + basis.source().file());
    return new StreamedSheet(sheet, looks, widths);
  }

  void head() {
    jobs.next();
    jobs.span(0, jobs.lastColumn(), "Tender " + basis.source().file(), Look.TITLE);
    jobs.next();
    jobs.span(
        0,
        jobs.lastColumn(),
        "Prices in "
            + counts.goods().getCurrencyUnit().getCode()
            + " of "
            + basis.date()
            + " where a row names no other day, from catalogue load "
            + basis.catalogueLoad()
            + ". Goods only: freight and tax are a quote's. A job's pressures hold at its own flow;"
            + " thread and pressure are measured on site, and local codes come first.",
        Look.TEXT);
    int first = 2 + 6 + 2;
    int last = first + counts.jobs() - 1;
    String feasible = column(FEASIBLE, first, last);
    total("Jobs", "COUNTA(" + feasible + ")", counts.jobs(), "tender_jobs");
    total("Can be laid", countOf(feasible, "yes"), counts.priced(), "tender_laid");
    jobs.next();
    jobs.span(0, 1, "Goods of these", Look.STRONG)
        .formula(
            2,
            "SUM(" + column(GOODS, first, last) + ")",
            counts.goods().getAmount().doubleValue(),
            Look.MONEY_STRONG)
        .named(2, "tender_goods");
    total("No safe plan", countOf(feasible, "no"), counts.noSafePlan(), "tender_no_safe_plan");
    total(
        "Cannot be read",
        countOf(feasible, "not read"),
        counts.badInput() + counts.failed(),
        "tender_not_read");
    jobs.next();
    jobsHeading = jobs.heading(headings(), Set.of(6, 7, 9, 10, 11, 12, 13, GOODS, QUOTE + 1));
    errors.next();
    errors.span(
        0,
        errors.lastColumn(),
        "Rows that could not be read, and jobs without a safe plan",
        Look.TITLE);
    errorsHeading =
        errors.heading(
            List.of(
                "Line",
                "Id",
                "What",
                "Field",
                "Value",
                "What is allowed, or what limits it",
                "Perhaps instead"),
            Set.of());
  }

  private void total(String label, String formula, int value, String name) {
    jobs.next();
    jobs.span(0, 1, label, Look.TEXT).formula(2, formula, value, Look.COUNT).named(2, name);
  }

  private static String countOf(String range, String word) {
    return "COUNTIF(" + range + ",\"" + word + "\")";
  }

  private static String column(int column, int first, int last) {
    String letter = Cells.letter(column);
    return "$" + letter + "$" + first + ":$" + letter + "$" + last;
  }

  private List<String> headings() {
    List<String> names =
        new ArrayList<>(
            List.of(
                "Line",
                "Id",
                "Job",
                "Feasible",
                "Limit",
                "Hose",
                "Size in",
                "Lines",
                "Sections",
                "Flow gpm",
                "Need psi",
                "Arrives psi",
                "Source needs psi",
                "Source gives psi",
                "Goods",
                "Terms"));
    if (basis.quoted()) {
      names.addAll(List.of("Quote", basis.together() ? "Goods in it" : "Quote total"));
    }
    return names;
  }

  void row(TenderResult row) {
    jobs.next();
    jobs.number(0, row.place().line(), Look.BODY_ORDER)
        .text(1, row.place().id(), Look.BODY)
        .text(2, row.place().title(), Look.BODY)
        .text(FEASIBLE, feasible(row), Look.BODY_CENTRE)
        .text(4, limit(row), Look.BODY);
    row.figures().ifPresentOrElse(figures -> figures(row, figures), () -> blank(5));
    complaints(row);
  }

  private void figures(TenderResult row, Figures plan) {
    jobs.text(5, plan.laid().hose(), Look.BODY).text(8, plan.laid().sections(), Look.BODY);
    figure(6, plan.laid().sizeIn(), Look.BODY_LOOSE);
    figure(7, plan.laid().lines(), Look.BODY_COUNT);
    figure(9, plan.water().flowGpm(), Look.BODY_LOOSE);
    figure(10, plan.water().needPsi(), Look.BODY_LOOSE);
    pressure(11, plan.water().deliveredPsi());
    pressure(12, plan.water().requiredSourcePsi());
    pressure(13, plan.water().sourcePsi());
    // A line that is not safe has no price: its goods must never reach a sum.
    if (row.outcome() == TenderResult.Outcome.PRICED) {
      jobs.number(GOODS, plan.price().goods().getAmount().doubleValue(), Look.BODY_MONEY);
    } else {
      jobs.text(GOODS, "", Look.BODY);
    }
    jobs.text(15, plan.price().terms(), Look.BODY);
    if (basis.quoted()) {
      jobs.text(QUOTE, plan.price().quote().orElse(""), Look.BODY);
      plan.price()
          .quoteTotal()
          .ifPresentOrElse(
              total -> jobs.number(QUOTE + 1, total.getAmount().doubleValue(), Look.BODY_MONEY),
              () -> jobs.text(QUOTE + 1, "", Look.BODY));
    }
  }

  /** A package lays several lines, so that it has no figure of its own. */
  private void figure(int column, double value, Look look) {
    if (value == 0) {
      jobs.text(column, "", Look.BODY);
    } else {
      jobs.number(column, value, look);
    }
  }

  private void pressure(int column, Optional<Double> psi) {
    psi.ifPresentOrElse(
        known -> jobs.number(column, known, Look.BODY_NUMBER),
        () -> jobs.text(column, "", Look.BODY));
  }

  private void blank(int from) {
    for (int column = from; column <= jobs.lastColumn(); column++) {
      jobs.text(column, "", Look.BODY);
    }
  }

  private static String feasible(TenderResult row) {
    return switch (row.outcome()) {
      case PRICED -> "yes";
      case NO_SAFE_PLAN -> "no";
      case BAD_INPUT, OUR_FAULT -> "not read";
    };
  }

  private static String limit(TenderResult row) {
    return row.problems().isEmpty()
        ? row.limit()
        : row.problems().get(0).sentence()
            + (row.problems().size() > 1 ? " More: see Errors." : "");
  }

  private void complaints(TenderResult row) {
    if (row.outcome() == TenderResult.Outcome.NO_SAFE_PLAN) {
      String instead = String.join("; ", row.instead());
      complaint(row, "no safe plan", Problem.of("", "", row.limit()), instead);
    }
    String what = row.outcome() == TenderResult.Outcome.OUR_FAULT ? "our fault" : "cannot be read";
    row.problems().forEach(problem -> complaint(row, what, problem, problem.nearest()));
  }

  private void complaint(TenderResult row, String what, Problem problem, String instead) {
    errors.next();
    errors
        .number(0, row.place().line(), Look.BODY_ORDER)
        .text(1, row.place().id(), Look.BODY)
        .text(2, what, Look.BODY)
        .text(3, problem.field(), Look.BODY)
        .text(4, problem.value(), Look.BODY)
        .text(5, problem.allowed(), Look.BODY)
        .text(6, instead, Look.BODY);
  }

  void finish() {
    jobs.sifted(jobsHeading);
    errors.sifted(errorsHeading);
  }

  static Instant midnight(LocalDate day) {
    return day.atStartOfDay(ZoneOffset.UTC).toInstant();
  }
}
