package hosewright.door.shell.line;

import hosewright.catalogue.MoneyWords;
import hosewright.csv.PlainNumber;
import hosewright.desk.line.TradeOffs;
import hosewright.desk.line.TradeOffs.Row;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import hosewright.measure.UnitSystem;
import java.util.Locale;

/** Lines of which each is better in something than every other, as a person reads them. */
final class TradeOffText {
  private TradeOffText() {}

  static String of(TradeOffs front, Screen screen, UnitSystem units) {
    Table table =
        Table.of(
                "total",
                "hose, in",
                "series",
                "laid",
                (front.sourceStated() ? "arrives, " : "source must, ") + units.pressure().unit(),
                "full, " + units.weight().unit(),
                "sections",
                "best in")
            .numbers(0, 1, 4, 5, 6);
    for (Row row : front.rows()) {
      table.row(
          MoneyWords.of(row.total()),
          PlainNumber.of(row.hose().sizeIn()),
          row.hose().hoseSeries(),
          row.laid() + (row.hose().lines() > 1 ? ", " + row.hose().lines() + " lines in all" : ""),
          units
              .pressure()
              .figure(
                  front.sourceStated()
                      ? row.pressures().deliveredPsi()
                      : row.pressures().requiredSourcePsi()),
          units.weight().figure(row.chargedWeightLb()),
          row.sections(),
          String.join(", ", row.bestIn()));
    }
    Prose prose = new Prose(screen).block(table.on(screen));
    prose.line("Each of these passes every check and is better in something than every other.");
    if (front.found() > front.rows().size()) {
      prose.line(
          String.format(
              Locale.ROOT,
              "There are %d such lines; shown are the best in each of price, pressure, weight full"
                  + " of water and sections to couple, then those that differ most from them.",
              front.found()));
    }
    return prose.toString().stripLeading();
  }
}
