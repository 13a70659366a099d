package hosewright.store.backup;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jooq.DataType;
import org.jooq.impl.SQLDataType;

/** What a column of a backup holds, and how one cell of it is written: {@code \N} is nothing. */
enum CellType {
  /** Backslash, tab, line ends and other controls are written as {@link CellText} says. */
  TEXT("text", SQLDataType.CLOB, ".*", CellText::read),
  WHOLE("whole", SQLDataType.INTEGER, "-?\\d{1,10}", Integer::valueOf),
  LONG("long", SQLDataType.BIGINT, "-?\\d{1,19}", Long::valueOf),
  /** The shortest digits that give the same number back. */
  MEASURE(
      "measure",
      SQLDataType.DOUBLE,
      "-?\\d{1,20}\\.\\d{1,20}(E-?\\d{1,3})?|NaN|-?Infinity",
      Double::valueOf),
  /** All its places are written: 12.5000. */
  DECIMAL("decimal", SQLDataType.NUMERIC, "-?\\d{1,40}(\\.\\d{1,40})?", BigDecimal::new),
  TRUTH("truth", SQLDataType.BOOLEAN, "true|false", Boolean::valueOf),
  DAY("day", SQLDataType.LOCALDATE, "[+-]?\\d{4,9}-\\d\\d-\\d\\d", LocalDate::parse),
  /** In universal time. */
  MOMENT(
      "moment",
      SQLDataType.TIMESTAMPWITHTIMEZONE,
      "[+-]?\\d{4,9}-\\d\\d-\\d\\dT[\\d:.]{5,18}Z",
      text -> Instant.parse(text).atOffset(ZoneOffset.UTC));

  static final String NOTHING = "\\N";

  private final String word;
  private final DataType<?> stored;
  private final Pattern written;
  private final Function<String, Object> reader;

  CellType(String word, DataType<?> stored, String written, Function<String, Object> reader) {
    this.word = word;
    this.stored = stored;
    this.written = Pattern.compile(written, Pattern.DOTALL);
    this.reader = reader;
  }

  /** The type of a column by the class of its values, as tables of ours or a driver name it. */
  static CellType of(Class<?> values) {
    if (values == java.sql.Date.class) {
      return DAY;
    }
    return Arrays.stream(values())
        .filter(type -> type.stored.getType() == values)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("a column of " + values));
  }

  /** The type of that name. */
  static Optional<CellType> named(String word) {
    return Arrays.stream(values()).filter(type -> type.word.equals(word)).findFirst();
  }

  String word() {
    return word;
  }

  DataType<?> stored() {
    return stored;
  }

  /** A cell as it stands in the file. */
  String write(Object cell) {
    if (cell == null) {
      return NOTHING;
    }
    return switch (this) {
      case TEXT -> CellText.write((String) cell);
      case DECIMAL -> ((BigDecimal) cell).toPlainString();
      case MOMENT -> ((OffsetDateTime) cell).toInstant().toString();
      default -> cell.toString();
    };
  }

  /**
   * The cell again.
   *
   * @throws IllegalArgumentException when it is none of this type
   */
  Object read(String cell) {
    if (cell.equals(NOTHING)) {
      return null;
    }
    if (this != TEXT && !written.matcher(cell).matches()) {
      throw new IllegalArgumentException(cell);
    }
    try {
      return reader.apply(cell);
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException(cell, e);
    }
  }
}
