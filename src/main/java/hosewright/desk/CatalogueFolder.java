package hosewright.desk;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.reading.CatalogueReader;
import hosewright.csv.CellRows;
import hosewright.csv.CsvFile;
import hosewright.csv.CsvText;
import hosewright.csv.TableForm;
import hosewright.intake.DealerFiles;
import hosewright.problem.BadInputException;
import hosewright.quote.terms.CustomerReader;
import hosewright.quote.terms.Customers;
import hosewright.quote.terms.DealerTerms;
import hosewright.quote.terms.MarginFloorReader;
import hosewright.quote.terms.MarginFloors;
import hosewright.quote.terms.TaxReader;
import hosewright.quote.terms.TaxTable;
import hosewright.quote.terms.TermsReader;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;

/**
 * What a dealer hands over for the books, read whole. What it leaves out stays as it stands.
 *
 * @param source what it came from
 */
public record CatalogueFolder(
    String source,
    Catalogue catalogue,
    Optional<Customers> customers,
    Optional<DealerTerms> terms,
    Optional<MarginFloors> floors,
    Optional<TaxTable> taxes) {
  private static final String DEMO = "/hosewright/demo/catalogue/";
  private static final List<TableForm> OPTIONAL =
      Stream.of(
              CustomerReader.FORMS,
              TermsReader.FORMS,
              List.of(MarginFloorReader.FORM, TaxReader.FORM))
          .flatMap(List::stream)
          .toList();

  /** Every table that may be in one. */
  public static final List<TableForm> FORMS =
      Stream.concat(CatalogueReader.FORMS.stream(), OPTIONAL.stream()).toList();

  /**
   * The catalogue in a folder or workbook.
   *
   * @param mapping file that maps the dealer's own columns to ours
   * @param progress told how far a long reading is
   * @throws BadInputException naming every file that is missing and every cell that is wrong
   */
  public static CatalogueFolder read(
      Path place, Optional<Path> mapping, Consumer<String> progress) {
    Map<String, CellRows> tables =
        DealerFiles.open(place, mapping, CatalogueReader.FORMS, OPTIONAL);
    tables.replaceAll((name, rows) -> new CountedRows(rows, progress));
    return read(place.toString(), tables);
  }

  /** The invented demo catalogue that comes with the program. */
  public static CatalogueFolder demo() {
    Map<String, CellRows> tables = new LinkedHashMap<>();
    for (TableForm form : FORMS) {
      String path = DEMO + form.name();
      tables.put(
          form.name(),
          new CsvText(
              form.name(),
              CsvFile.utf8(
                  Objects.requireNonNull(CatalogueFolder.class.getResourceAsStream(path), path))));
    }
    return read("the invented demo catalogue", tables);
  }

  private static CatalogueFolder read(String source, Map<String, CellRows> tables) {
    Refusals refusals = new Refusals();
    Optional<Catalogue> catalogue = refusals.read(() -> CatalogueReader.readTables(tables));
    Optional<MarginFloors> floors =
        has(tables, List.of(MarginFloorReader.FORM))
            ? refusals.read(() -> MarginFloorReader.read(tables))
            : Optional.empty();
    Optional<CurrencyUnit> currency = catalogue.flatMap(Catalogue::currency);
    Optional<DealerTerms> terms =
        has(tables, TermsReader.FORMS)
            ? refusals.read(() -> TermsReader.readTables(tables, currency))
            : Optional.empty();
    Optional<TaxTable> taxes =
        has(tables, List.of(TaxReader.FORM))
            ? refusals.read(() -> TaxReader.read(tables))
            : Optional.empty();
    // Without the items nobody can tell which contract prices are about none.
    Optional<Customers> customers =
        catalogue.isPresent() && has(tables, CustomerReader.FORMS)
            ? refusals.read(
                () ->
                    CustomerReader.readTables(
                        tables, catalogue.get(), floors.orElse(MarginFloors.NONE)))
            : Optional.empty();
    refusals.throwAny();
    return new CatalogueFolder(source, catalogue.orElseThrow(), customers, terms, floors, taxes);
  }

  private static boolean has(Map<String, CellRows> tables, List<TableForm> forms) {
    return forms.stream().anyMatch(form -> tables.containsKey(form.name()));
  }
}
