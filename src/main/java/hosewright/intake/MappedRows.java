package hosewright.intake;

import hosewright.csv.CellRows;
import hosewright.csv.TableForm;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A dealer's table in the columns of ours. */
final class MappedRows implements CellRows {
  /** A number with a decimal comma, or whose thousands are parted by points. */
  private static final Pattern DECIMAL_COMMA =
      Pattern.compile("-?(\\d+|[1-9]\\d{0,2}(\\.\\d{3})+),\\d+|-?[1-9]\\d{0,2}(\\.\\d{3})+");

  private final CellRows theirs;
  private final TableForm form;
  private final TableMapping mapping;
  private final boolean shortRows;

  /**
   * @param shortRows whether a row may leave out the empty cells at its end, as in a workbook
   */
  MappedRows(CellRows theirs, TableForm form, TableMapping mapping, boolean shortRows) {
    this.theirs = theirs;
    this.form = form;
    this.mapping = mapping;
    this.shortRows = shortRows;
  }

  @Override
  public String title() {
    return theirs.title();
  }

  @Override
  public String columnTitle(String column) {
    ColumnSource source = mapping.columns().get(column);
    return source == null ? column : source.title(column);
  }

  @Override
  public void each(Taker taker) {
    theirs.each(new Translator(taker));
  }

  private final class Translator implements Taker {
    private final Taker taker;
    private Map<String, Integer> places;
    private int width;

    Translator(Taker taker) {
      this.taker = taker;
    }

    @Override
    public void refuse(Problem problem) {
      taker.refuse(problem);
    }

    @Override
    public boolean take(Row row) {
      if (row.line() < mapping.headerLine()) {
        return true;
      }
      if (places == null) {
        return takeHeading(row.cells());
      }
      int cells = row.cells().size();
      if (cells == width || (shortRows && cells < width)) {
        return taker.take(translated(row));
      }
      refuse(
          Problem.of(
              title() + " line " + row.line(),
              cells + " cells",
              width + " cells, as in the headings"));
      return true;
    }

    private boolean takeHeading(List<String> headings) {
      width = headings.size();
      places = new HashMap<>();
      for (int i = 0; i < headings.size(); i++) {
        places.putIfAbsent(headings.get(i), i);
      }
      boolean whole = true;
      for (Map.Entry<String, ColumnSource> entry : mapping.columns().entrySet()) {
        for (String their : entry.getValue().theirs()) {
          if (!places.containsKey(their)) {
            whole = false;
            refuse(
                new Problem(
                    title() + " header",
                    their,
                    "the mapping names it for %s, and the columns are %s"
                        .formatted(entry.getKey(), String.join(", ", headings)),
                    Nearest.to(their, headings)));
          }
        }
      }
      return whole && taker.take(Row.of(mapping.headerLine(), form.columns()));
    }

    private Row translated(Row row) {
      List<String> cells = new ArrayList<>(form.columns().size());
      List<String> written = new ArrayList<>(form.columns().size());
      for (String column : form.columns()) {
        ColumnSource source = mapping.columns().get(column);
        cells.add(source == null ? "" : joined(source, row, cell -> ours(source, cell)));
        written.add(source == null ? "" : joined(source, row, cell -> cell));
      }
      return new Row(row.line(), cells, written);
    }

    private String joined(ColumnSource source, Row row, UnaryOperator<String> reading) {
      return source
          .always()
          .orElseGet(
              () ->
                  source.theirs().stream()
                      .map(their -> reading.apply(cell(row, their)))
                      .filter(cell -> !cell.isEmpty())
                      .collect(Collectors.joining(source.join())));
    }

    private String cell(Row row, String their) {
      int place = Objects.requireNonNull(places.get(their), their);
      return place < row.cells().size() ? row.cells().get(place) : "";
    }
  }

  private String ours(ColumnSource source, String cell) {
    String word = source.words().getOrDefault(cell, cell);
    String number =
        mapping.decimalComma() && DECIMAL_COMMA.matcher(word).matches()
            ? word.replace(".", "").replace(',', '.')
            : word;
    String converted = source.unit().map(unit -> unit.convert(number)).orElse(number);
    return source.dates().map(order -> order.iso(converted)).orElse(converted);
  }
}
