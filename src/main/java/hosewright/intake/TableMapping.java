package hosewright.intake;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How one of our tables is read from a file of the dealer's.
 *
 * @param file file name, in the folder given
 * @param sheet sheet of a workbook; the first when empty
 * @param headerLine line the dealer's headings stand on, 1 for the first
 * @param separator mark between cells of a text file
 * @param encoding letters of a text file
 * @param decimalComma whether numbers are written 1.234,50
 * @param columns our column to where it comes from
 */
record TableMapping(
    String file,
    Optional<String> sheet,
    int headerLine,
    char separator,
    Charset encoding,
    boolean decimalComma,
    Map<String, ColumnSource> columns) {

  TableMapping {
    columns = new LinkedHashMap<>(columns);
  }

  static final Charset USUAL = StandardCharsets.UTF_8;
}
