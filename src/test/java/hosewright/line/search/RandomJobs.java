package hosewright.line.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Jobs as they may come to the counter of the demo catalogue's dealer, most of them sensible. */
public final class RandomJobs {
  private static final List<String> SOURCES =
      List.of(
          "2.5 NH male hydrant",
          "4.5 NH male hydrant",
          "2.5 NH male pump",
          "2.5 NH female pump",
          "2 NPT male pipe",
          "1 NPT female pipe",
          "1.5 NPSH male outlet",
          "0.75 GHT male outlet",
          "5 Storz hydrant",
          "3 cam plug tank",
          "2.5 QST male hydrant");
  private static final List<String> APPLIANCES =
      List.of(
          "1.5 NH female nozzle",
          "1 NH female nozzle",
          "2.5 NH female monitor",
          "1.5 NPSH female sprinkler",
          "0.75 GHT female sprinkler",
          "3 NPSH female tank",
          "2 NPT female tank",
          "2 cam socket tank",
          "2 NPT male pipe",
          "4 Storz appliance");
  private static final List<String> ACCESSORIES =
      List.of("wrench", "wrench, ramp", "backflow", "gauge, restraint", "SVC-FLUSH, strainer");

  private final Random random;
  private final List<String> answers = new ArrayList<>();

  private RandomJobs(int seed) {
    this.random = new Random(seed);
  }

  /** Field words and answers in turn. */
  public static String[] answers(int seed, String... more) {
    RandomJobs job = new RandomJobs(seed);
    job.fill();
    job.answers.addAll(List.of(more));
    return job.answers.toArray(String[]::new);
  }

  /**
   * A job as a tender's row asks it: but for one in twenty it names the hose, of a size that is
   * laid for so much water; a few divide behind a wye or start at two outlets.
   */
  static String[] tenderAnswers(int seed) {
    RandomJobs job = new RandomJobs(seed);
    int flowGpm = job.fill();
    if (job.random.nextInt(20) > 0) {
      job.answer("size", job.pick(sizes(flowGpm)));
      switch (job.random.nextInt(8)) {
        case 0 -> job.divide();
        case 1 -> job.answer("outlets", "2");
        default -> {}
      }
    }
    return job.answers.toArray(String[]::new);
  }

  private static List<String> sizes(int flowGpm) {
    return flowGpm < 40
        ? List.of("0.75 in", "1 in", "1.5 in")
        : flowGpm < 150
            ? List.of("1.5 in", "1.75 in", "2 in", "2.5 in")
            : flowGpm < 350 ? List.of("2 in", "2.5 in", "3 in") : List.of("3 in", "4 in", "5 in");
  }

  private void divide() {
    answer("attack-lines", "2");
    answer("attack-length", (50 + random.nextInt(150)) + " ft");
    answer("attack-size", pick(List.of("1 in", "1.5 in", "1.75 in")));
  }

  /** The flow asked for, gpm. */
  private int fill() {
    int lengthFt = 60 + random.nextInt(600);
    answer("from", pick(SOURCES));
    answer("to", pick(APPLIANCES));
    answer("length", lengthFt + " ft");
    int flowGpm = 10 + random.nextInt(random.nextBoolean() ? 150 : 600);
    answer("flow", flowGpm + " gpm");
    answer("need", (5 + random.nextInt(100)) + " psi");
    if (random.nextInt(3) == 0) {
      answer("rise", (random.nextInt(100) - 50) + " ft");
    }
    switch (random.nextInt(4)) {
      case 0 -> answer("source-pressure", (60 + random.nextInt(200)) + " psi");
      case 1 -> {
        answer("static", (60 + random.nextInt(60)) + " psi");
        answer("residual", (25 + random.nextInt(30)) + " psi");
        answer("at", (300 + random.nextInt(1_200)) + " gpm");
      }
      case 2 -> answer("pump-curve", "190 psi at 0 gpm; 150 psi at 300 gpm; 110 psi at 700 gpm");
      default -> {}
    }
    answer("use", pick(List.of("fire", "water", "water", "drinking")));
    if (random.nextInt(4) == 0) {
      answer("temperature", pick(List.of("60 F", "100 F", "140 F")));
    }
    if (random.nextInt(3) == 0) {
      answer("accessories", pick(ACCESSORIES));
    }
    return flowGpm;
  }

  private String pick(List<String> from) {
    return from.get(random.nextInt(from.size()));
  }

  private void answer(String field, String text) {
    answers.add(field);
    answers.add(text);
  }
}
