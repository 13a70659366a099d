package hosewright.tender;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/**
 * Invented tenders: as many jobs as wanted, the same for the same seed.
 *
 * <p>Most name a hose size, as tenders do; one in twenty leaves it open, one in forty cannot be
 * read.
 */
public final class TenderJobs {
  private static final String HEADER =
      "id,title,from,to,length (ft),flow (gpm),need (psi),source-pressure,size,use,accessories\n";

  private TenderJobs() {}

  /** Writes a tender: {@code FILE COUNT SEED}. */
  public static void main(String[] words) throws IOException {
    Files.writeString(Path.of(words[0]), of(Integer.parseInt(words[1]), Long.parseLong(words[2])));
  }

  /** A tender of so many rows, as CSV text. */
  public static String of(int count, long seed) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder(HEADER);
    for (int row = 1; row <= count; row++) {
      text.append(row(row, random)).append('\n');
    }
    return text.toString();
  }

  private static String row(int row, Random random) {
    String place = "Lot " + row + " on Quay " + (char) ('A' + random.nextInt(26));
    String[] job =
        switch (random.nextInt(4)) {
          case 0 -> supply(random);
          case 1 -> wash(random);
          default -> hand(random);
        };
    if (random.nextInt(20) == 0) {
      job[6] = "";
    }
    if (random.nextInt(40) == 0) {
      job[3] = "plenty";
    }
    String id = String.format(Locale.ROOT, "T-%05d", row);
    return id + "," + place + "," + String.join(",", job);
  }

  private static String[] hand(Random random) {
    String size = pick(random, "1.5 in", "1.75 in", "2 in");
    return new String[] {
      "2.5 NH male hydrant",
      "1.5 NH female nozzle",
      steps(random, 100, 25, 21),
      steps(random, 60, 5, 15),
      pick(random, "50", "75", "100"),
      pick(random, "120 psi", "150 psi", "175 psi"),
      size,
      "fire",
      pick(random, "", "wrench")
    };
  }

  private static String[] supply(Random random) {
    return new String[] {
      "2.5 NH male hydrant",
      "2.5 NH female appliance",
      steps(random, 100, 50, 15),
      steps(random, 150, 25, 13),
      pick(random, "20", "30"),
      pick(random, "80 psi", "100 psi", "120 psi"),
      pick(random, "2.5 in", "3 in"),
      "fire",
      ""
    };
  }

  private static String[] wash(Random random) {
    return new String[] {
      "1.5 NPSH male outlet",
      "1.5 NPSH female nozzle",
      steps(random, 50, 25, 11),
      steps(random, 30, 5, 11),
      pick(random, "40", "50"),
      pick(random, "80 psi", "90 psi", "100 psi"),
      "1.5 in",
      "water",
      ""
    };
  }

  private static String steps(Random random, int from, int step, int count) {
    return String.valueOf(from + step * random.nextInt(count));
  }

  private static String pick(Random random, String... choices) {
    return choices[random.nextInt(choices.length)];
  }
}
