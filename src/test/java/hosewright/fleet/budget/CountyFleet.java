package hosewright.fleet.budget;

import hosewright.fleet.record.InventoryReader;
import hosewright.fleet.record.OutletReader;
import hosewright.fleet.record.RecordReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Invents the hose of a county: stations, sections that wear out by a known law and are tested
 * every year since the register began, apparatus and hydrants. The same seed invents the same
 * county.
 */
public final class CountyFleet {
  /** The law its hose wears out by. */
  public static final Weibull LAW = new Weibull(3, 15);

  /** The day it was written down. */
  public static final LocalDate TODAY = LocalDate.of(2026, 11, 2);

  private static final LocalDate REGISTER = LocalDate.of(2016, 1, 1);
  private static final List<String[]> KINDS =
      List.of(
          new String[] {"1.75", "50", "1.5 NH female swivel x 1.5 NH male", "double jacket", "300"},
          new String[] {"2.5", "50", "2.5 NH female swivel x 2.5 NH male", "double jacket", "300"},
          new String[] {"3", "50", "2.5 NH female swivel x 2.5 NH male", "double jacket", "300"},
          new String[] {"5", "100", "5 Storz x 5 Storz", "rubber", "200"},
          new String[] {
            "2.5", "50", "2.5 NPSH female swivel x 2.5 NPSH male", "double jacket", "300"
          });

  private final int stations;
  private final SplittableRandom random;
  private int worn;
  private int lost;

  private CountyFleet(int stations, long seed) {
    this.stations = stations;
    this.random = new SplittableRandom(seed);
  }

  /** How many of the invented sections wore out, and how many were lost. */
  public record Truth(int worn, int lost) {}

  /**
   * Writes a county into a folder: {@code FOLDER STATIONS SECTIONS SEED}.
   *
   * @param arguments as above
   */
  public static void main(String[] arguments) throws IOException {
    write(
        Files.createDirectories(Path.of(arguments[0])),
        Integer.parseInt(arguments[1]),
        Integer.parseInt(arguments[2]),
        Long.parseLong(arguments[3]));
  }

  /** Writes inventory, records, outlets and limits into a folder. */
  public static Truth write(Path folder, int stations, int sections, long seed) throws IOException {
    CountyFleet county = new CountyFleet(stations, seed);
    try (BufferedWriter inventory = Files.newBufferedWriter(folder.resolve("inventory.csv"));
        BufferedWriter records = Files.newBufferedWriter(folder.resolve("records.csv"))) {
      inventory.write(String.join(",", InventoryReader.FORM.columns()) + "\n");
      records.write(String.join(",", RecordReader.FORM.columns()) + "\n");
      for (int i = 1; i <= sections; i++) {
        county.section(String.format("C-%07d", i), inventory, records);
      }
    }
    county.outlets(folder.resolve("outlets.csv"));
    Files.writeString(folder.resolve("limits.csv"), "key,value\nage_years,15\n");
    return new Truth(county.worn, county.lost);
  }

  private void section(String id, BufferedWriter inventory, BufferedWriter records)
      throws IOException {
    int draw = random.nextInt(100);
    String[] kind = KINDS.get(draw < 45 ? 0 : draw < 75 ? 1 : draw < 85 ? 2 : draw < 98 ? 3 : 4);
    LocalDate made;
    LocalDate dies;
    do {
      made = TODAY.minusDays(200 + random.nextInt(20 * 365));
      double years =
          LAW.scaleYears() * Math.pow(-Math.log(1 - random.nextDouble()), 1 / LAW.shape());
      dies = made.plusDays((long) (years * 365.25));
      // What wore out before the register began, or before its first year was out, is not in it.
    } while (!dies.isAfter(made.plusDays(60)) || !dies.isAfter(REGISTER));
    LocalDate inService = made.plusDays(60);
    LocalDate since = inService.isBefore(REGISTER) ? REGISTER : inService;
    int station = 1 + random.nextInt(stations);
    inventory.write(
        "%s,%s,%s,,%s,%s,,%s,%s,Station %d,Engine %d,in-service,%s,,,,\n"
            .formatted(
                id, kind[0], kind[1], kind[2], kind[3], made, inService, station, station, since));
    tests(id, kind[4], since, dies, records);
  }

  private void tests(String id, String psi, LocalDate since, LocalDate dies, BufferedWriter records)
      throws IOException {
    for (LocalDate day = since.plusDays(random.nextInt(300) + 30L);
        !day.isAfter(TODAY);
        day = day.plusDays(360 + random.nextInt(10))) {
      if (!day.isBefore(dies)) {
        worn++;
        records.write(id + "," + day + ",leak," + psi + ",,,\n");
        return;
      }
      if (random.nextInt(300) == 0) {
        lost++;
        records.write(id + "," + day + ",lost,,,,\n");
        return;
      }
      records.write(id + "," + day + ",pass," + psi + ",3,,\n");
    }
  }

  private void outlets(Path file) throws IOException {
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      out.write(String.join(",", OutletReader.FORM.columns()) + "\n");
      for (int station = 1; station <= stations; station++) {
        out.write("Engine " + station + ",intake,Station " + station + ",5 Storz,1\n");
        out.write("Engine " + station + ",intake,Station " + station + ",2.5 NH female swivel,2\n");
        for (int hydrant = 1; hydrant <= 20; hydrant++) {
          String end = hydrant == 20 && station == 1 ? "2.5 NPSH male" : "2.5 NH male";
          out.write("HY-%d-%d,hydrant,Station %d,%s,2\n".formatted(station, hydrant, station, end));
        }
      }
    }
  }
}
