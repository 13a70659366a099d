package hosewright.catalogue;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Writes an invented catalogue of any size, the same for the same seed: for measuring.
 *
 * <p>{@code java -cp target/test-classes hosewright.catalogue.LargeCatalogue FOLDER ITEMS SEED}
 */
public final class LargeCatalogue {
  private static final List<String> SUPPLIERS = List.of("WEAVE", "FORGE", "RUBBR", "VALVE");
  private static final List<String> MATERIALS =
      List.of("aluminum", "brass", "stainless steel", "bronze", "polyester", "EPDM");
  private static final List<String> NAMES =
      List.of("Attack", "Supply", "Washdown", "Forestry", "Suction", "Transfer", "Wharf", "Mill");
  private static final List<String> GRADES =
      List.of("single jacket", "double jacket", "covered", "premium", "light", "heavy");
  private static final List<String> HOSE_SIZES =
      List.of("1", "1.5", "1.75", "2", "2.5", "3", "4", "5");
  private static final List<String> SIZES = List.of("1.5", "2.5", "3", "4");
  private static final List<String> CAM_SIZES = List.of("1.5", "2", "3", "4");
  private static final List<String> FAMILIES = List.of("NPSH", "NPT", "NH", "cam");
  private static final List<String> LENGTHS = List.of("10", "15", "25", "50", "75", "100", "300");

  private final Random random;
  private final PrintWriter items;
  private final PrintWriter prices;
  private final PrintWriter costs;

  private LargeCatalogue(Random random, PrintWriter items, PrintWriter prices, PrintWriter costs) {
    this.random = random;
    this.items = items;
    this.prices = prices;
    this.costs = costs;
  }

  public static void main(String[] arguments) throws IOException {
    write(Path.of(arguments[0]), Integer.parseInt(arguments[1]), Long.parseLong(arguments[2]));
  }

  /** Writes the four files of a catalogue into a folder, which is made. */
  public static void write(Path folder, int count, long seed) throws IOException {
    Files.createDirectories(folder);
    try (PrintWriter suppliers = file(folder, "suppliers.csv");
        PrintWriter items = file(folder, "items.csv");
        PrintWriter prices = file(folder, "prices.csv");
        PrintWriter costs = file(folder, "costs.csv")) {
      suppliers.println("code,name,lead_days,minimum_order,currency");
      SUPPLIERS.forEach(code -> suppliers.println(code + ",Invented " + code + " Works,14,,"));
      items.println(
          "number,kind,description,ends,unit,weight_lb,material,fluids,working_psi,"
              + "service_test_psi,derating,vacuum_inhg,hose_size_in,length_ft,series,"
              + "friction_coefficient,bore_in,bowl_in,wave_speed_ft_s,loss_k,appliance_loss_psi,"
              + "opening_in,k_factor,drinking_water,discontinued,marked_to,gaskets_fitted,"
              + "supplier,pack,lead_days,on_hand");
      prices.println("item,from,until,min_quantity,unit_price,currency");
      costs.println("item,supplier,from,until,unit_cost,currency");
      LargeCatalogue catalogue = new LargeCatalogue(new Random(seed), items, prices, costs);
      for (int i = 1; i <= count; i++) {
        catalogue.item(i);
      }
    }
  }

  private static PrintWriter file(Path folder, String name) throws IOException {
    return new PrintWriter(Files.newBufferedWriter(folder.resolve(name), StandardCharsets.UTF_8));
  }

  private void item(int i) {
    String number = String.format(Locale.ROOT, "Q%06d", i);
    switch (random.nextInt(10)) {
      case 0, 1, 2 -> hose(number);
      case 3, 4, 5, 6 -> fitting(number, "adapter", "Adapter", end() + " x " + end());
      case 7 -> fitting(number, "gasket", "Gasket", pick(SIZES) + " NH female");
      case 8 -> fitting(number, "cap", "Cap", pick(SIZES) + " NH female");
      default -> fitting(number, "nozzle", "Nozzle", "1.5 NH female swivel");
    }
    money(number);
  }

  private void hose(String number) {
    String size = pick(HOSE_SIZES);
    String length = pick(LENGTHS);
    String name = pick(NAMES) + " hose, " + pick(GRADES);
    String thread = pick(SIZES) + " " + (random.nextBoolean() ? "NH" : "NPSH");
    items.printf(
        Locale.ROOT,
        "%s,hose,\"%s, %s in x %s ft, %s couplings\",%s female swivel x %s male,each,%d,%s,water,"
            + "250,300,,,%s,%s,%s %s,%d,,,,,,,,%s,no,NFPA 1961,yes,%s,1,,%d%n",
        number,
        name,
        size,
        length,
        thread,
        thread,
        thread,
        5 + random.nextInt(100),
        pick(MATERIALS),
        size,
        length,
        name.replace(",", ""),
        size,
        5 + HOSE_SIZES.size() - HOSE_SIZES.indexOf(size),
        random.nextInt(4) == 0 ? "yes" : "no",
        pick(SUPPLIERS),
        random.nextInt(50));
  }

  private void fitting(String number, String kind, String name, String ends) {
    items.printf(
        Locale.ROOT,
        "%s,%s,\"%s, %s, %s\",%s,each,%.1f,%s,water,300,,,,,,,,,,,0.3,,,,%s,no,,yes,%s,1,,%d%n",
        number,
        kind,
        name,
        ends,
        pick(GRADES),
        ends,
        0.1 + random.nextInt(90) / 10.0,
        pick(MATERIALS),
        random.nextInt(4) == 0 ? "yes" : "no",
        pick(SUPPLIERS),
        random.nextInt(200));
  }

  private String end() {
    String family = pick(FAMILIES);
    if (family.equals("cam")) {
      return pick(CAM_SIZES) + " cam " + (random.nextBoolean() ? "plug" : "socket");
    }
    boolean male = random.nextBoolean();
    return pick(SIZES) + " " + family + (male ? " male" : " female");
  }

  private void money(String number) {
    int cents = 200 + random.nextInt(60_000);
    for (int from : new int[] {1, 10, 50}) {
      prices.printf(
          Locale.ROOT,
          "%s,2026-01-01,,%d,%.2f,USD%n",
          number,
          from,
          cents * (from == 1 ? 100 : from == 10 ? 96 : 92) / 10_000.0);
    }
    costs.printf(
        Locale.ROOT,
        "%s,%s,2026-01-01,,%.2f,USD%n",
        number,
        pick(SUPPLIERS),
        cents * 60 / 10_000.0);
  }

  private String pick(List<String> values) {
    return values.get(random.nextInt(values.size()));
  }
}
