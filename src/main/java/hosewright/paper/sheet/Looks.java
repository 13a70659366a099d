package hosewright.paper.sheet;

import java.util.EnumMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.joda.money.CurrencyUnit;

/** The cell styles of one workbook, each made once. */
public final class Looks {
  static final String FONT_NAME = "Arial";

  /** Leaves room as wide as a zero behind the figure. */
  private static final String PADDING = "_0";

  private final XSSFWorkbook workbook;
  private final CurrencyUnit currency;
  private final Map<Look, XSSFCellStyle> plain = new EnumMap<>(Look.class);
  private final Map<Look, XSSFCellStyle> literal = new EnumMap<>(Look.class);

  public Looks(XSSFWorkbook workbook, CurrencyUnit currency) {
    this.workbook = workbook;
    this.currency = currency;
    // Column widths are counted in digits of the first font: it must be the one cells use.
    XSSFFont first = workbook.getFontAt(0);
    first.setFontName(FONT_NAME);
    first.setFontHeightInPoints((short) 10);
  }

  XSSFCellStyle of(Look look) {
    return plain.computeIfAbsent(look, this::make);
  }

  /** The look for text that a spreadsheet would take for a formula if it were typed again. */
  XSSFCellStyle literal(Look look) {
    return literal.computeIfAbsent(
        look,
        wanted -> {
          XSSFCellStyle style = make(wanted);
          style.setQuotePrefixed(true);
          return style;
        });
  }

  private XSSFCellStyle make(Look look) {
    Look.Spec spec = look.spec;
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFont(font(spec));
    style.setWrapText(spec.wrapped);
    style.setAlignment(spec.alignment);
    style.setIndention((short) (padded(spec) ? 0 : spec.indent));
    style.setVerticalAlignment(VerticalAlignment.TOP);
    style.setLocked(!spec.open);
    style.setDataFormat(workbook.createDataFormat().getFormat(format(spec)));
    if (spec.shaded) {
      fill(style, IndexedColors.GREY_25_PERCENT);
    } else if (spec.open) {
      fill(style, IndexedColors.LIGHT_YELLOW);
    }
    if (spec.boxed) {
      style.setBorderTop(BorderStyle.THIN);
      style.setBorderBottom(BorderStyle.THIN);
      style.setBorderLeft(BorderStyle.THIN);
      style.setBorderRight(BorderStyle.THIN);
    }
    if (spec.ruleAbove) {
      style.setBorderTop(BorderStyle.THIN);
    }
    if (spec.ruleBelow) {
      style.setBorderBottom(BorderStyle.THIN);
    }
    return style;
  }

  private XSSFFont font(Look.Spec spec) {
    XSSFFont font = workbook.createFont();
    font.setFontName(FONT_NAME);
    font.setFontHeightInPoints((short) spec.sizePt);
    font.setBold(spec.bold);
    if (spec.grey) {
      font.setColor(IndexedColors.GREY_80_PERCENT.getIndex());
    }
    return font;
  }

  private String format(Look.Spec spec) {
    String decimals =
        currency.getDecimalPlaces() > 0 ? "." + "0".repeat(currency.getDecimalPlaces()) : "";
    String amount = "#,##0" + decimals;
    if (spec.banner) {
      return "\"Total " + currency.getCode() + " \"" + amount;
    }
    String format = spec.money ? amount : spec.format;
    return padded(spec) ? format + PADDING : format;
  }

  /** Figures keep clear of the rule beside them by their format: not all programs indent them. */
  private static boolean padded(Look.Spec spec) {
    return spec.figures && spec.indent > 0 && !spec.format.equals("General");
  }

  private static void fill(XSSFCellStyle style, IndexedColors colour) {
    style.setFillForegroundColor(colour.getIndex());
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
  }
}
