package hosewright.catalogue;

import hosewright.catalogue.reading.CatalogueReader;
import hosewright.catalogue.reading.ItemCells;
import hosewright.csv.CsvText;
import java.io.Reader;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** A small catalogue of the invented dealer Quillback, as the files a dealer would edit. */
public final class CatalogueFiles {
  /** A day on which every base price is in force. */
  static final LocalDate DAY = LocalDate.of(2026, 4, 1);

  private static final String SUPPLIERS =
      """
      code,name,lead_days,minimum_order,currency
      PH,Port Harlow Mill,10,100.00,USD
      GW,"Gannet Works, Inc.",21,,
      """;

  private static final String ITEMS =
      String.join(",", ItemCells.COLUMNS)
          + """

          H25-50,hose,"Attack hose 2.5 in, 50 ft",2.5 NH male x 2.5 NH female swivel,each,31.5,polyester,water,300,300,,,2.5,50,mainline,2,2.5,2.72,1400,,,,,no,no,NFPA 1961,yes,PH,5,,40
          B15,bulk-hose,Washdown hose by the foot,,foot,0.42,EPDM,water;foam,250,,73:250;120:200;180:120.5,,1.5,,washdown,24,,1.81,,,,,,yes,no,,no,GW,500,30,1250
          C15-M,coupling,Coupling 1.5 in male,1.5 NH male,each,1.1,aluminum,water,300,,,,1.5,,,,,1.81,,,,,,no,no,,no,GW,,,12
          R25-15,adapter,Reducer,2.5 NH female swivel x 1.5 NH male,each,1.9,brass,water,500,,,,,,,,,,,0.35,,,,yes,yes,,yes,PH,1,,3
          V40,valve,Suction valve,4 NPT female x 4 NPT male,each,18,bronze,water,200,,,26,,,,,,,,,4,3.5,,no,no,,no,PH,1,14,0
          N95,nozzle,Fog nozzle,1.5 NH female swivel,each,3.2,aluminum,water,200,,,,,,,,,,,,,1.125,9.5,no,no,,yes,GW,1,,6
          TEST,service,Pressure test and tag,,each,0,,,,,,,,,,,,,,,,,,no,no,,no,,,,
          """;

  private static final String PRICES =
      """
      item,from,until,min_quantity,unit_price,currency
      H25-50,2026-01-01,2026-06-30,1,210.00,USD
      H25-50,2026-07-01,,1,219.50,USD
      H25-50,2026-07-01,,10,205.25,USD
      B15,2026-01-01,,1,3.10,USD
      C15-M,2026-01-01,,1,14,USD
      R25-15,2026-01-01,2026-12-31,1,38.4,USD
      TEST,2026-01-01,,1,12.00,USD
      """;

  private static final String COSTS =
      """
      item,supplier,from,until,unit_cost,currency
      H25-50,PH,2026-01-01,,140.00,USD
      H25-50,GW,2026-01-01,2026-03-31,139.99,USD
      B15,GW,2026-01-01,,1.95,USD
      """;

  private final Map<String, String> texts = new LinkedHashMap<>();

  public CatalogueFiles() {
    texts.put("suppliers.csv", SUPPLIERS);
    texts.put("items.csv", ITEMS);
    texts.put("prices.csv", PRICES);
    texts.put("costs.csv", COSTS);
  }

  /** These files with one piece of text changed, which must be there. */
  public CatalogueFiles with(String file, String piece, String replacement) {
    if (!texts.get(file).contains(piece)) {
      throw new IllegalArgumentException(file + " has no " + piece);
    }
    texts.put(file, texts.get(file).replace(piece, replacement));
    return this;
  }

  /** These files with one more row. */
  public CatalogueFiles plus(String file, String row) {
    texts.put(file, texts.get(file) + row + "\n");
    return this;
  }

  /** These files with the columns that came later filled for one item, and empty for the rest. */
  public CatalogueFiles withLater(String item, Map<String, String> facts) {
    if (!ItemCells.LATER_COLUMNS.containsAll(facts.keySet())) {
      throw new IllegalArgumentException("no such columns: " + facts.keySet());
    }
    String said =
        ItemCells.LATER_COLUMNS.stream()
            .map(column -> facts.getOrDefault(column, ""))
            .collect(Collectors.joining(","));
    String unsaid = ",".repeat(ItemCells.LATER_COLUMNS.size() - 1);
    String heading = String.join(",", ItemCells.COLUMNS);
    texts.put(
        "items.csv",
        texts
            .get("items.csv")
            .lines()
            .map(
                line ->
                    line
                        + ","
                        + (line.equals(heading)
                            ? String.join(",", ItemCells.LATER_COLUMNS)
                            : line.startsWith(item + ",") ? said : unsaid))
            .collect(Collectors.joining("\n", "", "\n")));
    return this;
  }

  /** These files with one price in all. */
  CatalogueFiles withOnlyPrice(String row) {
    texts.put("prices.csv", PRICES.lines().findFirst().orElseThrow() + "\n" + row + "\n");
    return this;
  }

  public CatalogueFiles without(String file) {
    texts.remove(file);
    return this;
  }

  public Map<String, Reader> readers() {
    Map<String, Reader> readers = new LinkedHashMap<>();
    texts.forEach((name, text) -> readers.put(name, new StringReader(text)));
    return readers;
  }

  public Catalogue read() {
    return CatalogueReader.readTables(CsvText.all(readers()));
  }
}
