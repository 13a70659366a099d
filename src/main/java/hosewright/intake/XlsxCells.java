package hosewright.intake;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.xml.sax.SAXException;

/** What the cells of one workbook mean: texts kept apart, and which numbers are shown as dates. */
final class XlsxCells {
  private static final long MOST_TEXT_BYTES = 128L << 20;
  private static final long MOST_STYLE_BYTES = 16L << 20;
  private static final Pattern FROM_1904 = Pattern.compile("date1904=\"(1|true)\"");

  /** A spreadsheet keeps 15 digits of what was typed; what follows is the binary fraction's. */
  private static final MathContext AS_TYPED = new MathContext(15);

  /** Before the point, or noughts behind it: a spreadsheet's numbers are IEEE 754 doubles. */
  private static final int MOST_DIGITS = 309;

  private final ReadOnlySharedStringsTable texts;
  private final StylesTable styles;
  private final boolean from1904;
  private final Map<Integer, String> textsMet = new HashMap<>();
  private final Map<Integer, Boolean> dateStyles = new HashMap<>();

  private XlsxCells(ReadOnlySharedStringsTable texts, StylesTable styles, boolean from1904) {
    this.texts = texts;
    this.styles = styles;
    this.from1904 = from1904;
  }

  static XlsxCells of(XSSFReader reader) throws IOException, OpenXML4JException, SAXException {
    ReadOnlySharedStringsTable texts = null;
    try (InputStream in = reader.getSharedStringsData()) {
      if (in != null) {
        texts = new ReadOnlySharedStringsTable(new LimitedStream(in, MOST_TEXT_BYTES), false);
      }
    }
    StylesTable styles = styles(reader);
    try (InputStream in = reader.getWorkbookData()) {
      String workbook = new String(XlsxRows.small(in, MOST_STYLE_BYTES), StandardCharsets.UTF_8);
      return new XlsxCells(texts, styles, FROM_1904.matcher(workbook).find());
    }
  }

  private static StylesTable styles(XSSFReader reader) throws IOException, OpenXML4JException {
    try (InputStream in = reader.getStylesData()) {
      return in == null
          ? new StylesTable()
          : new StylesTable(new ByteArrayInputStream(XlsxRows.small(in, MOST_STYLE_BYTES)));
    }
  }

  /** A text kept apart from the sheet. */
  String text(String index) {
    // Making the library's text object for every cell would take longer than all else.
    return textsMet.computeIfAbsent(
        Integer.valueOf(index),
        at -> texts == null || at >= texts.getUniqueCount() ? "" : texts.getItemAt(at).getString());
  }

  /**
   * A number as it was typed: a plain decimal, or the day where it is shown as one.
   *
   * @throws NumberFormatException when it is none, or larger than a spreadsheet keeps
   */
  String number(String value, String style) {
    BigDecimal number = new BigDecimal(value).round(AS_TYPED);
    if (Math.abs((long) number.precision() - number.scale()) > MOST_DIGITS) {
      throw new NumberFormatException(value);
    }
    if (!style.isEmpty() && isDate(Integer.parseInt(style))) {
      LocalDateTime moment = DateUtil.getLocalDateTime(number.doubleValue(), from1904);
      if (moment != null) {
        return moment.toLocalTime().equals(LocalTime.MIDNIGHT)
            ? moment.toLocalDate().toString()
            : moment.toString();
      }
    }
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  private boolean isDate(int style) {
    return dateStyles.computeIfAbsent(
        style,
        at -> {
          XSSFCellStyle found = at < styles.getNumCellStyles() ? styles.getStyleAt(at) : null;
          return found != null
              && DateUtil.isADateFormat(found.getDataFormat(), found.getDataFormatString());
        });
  }
}
