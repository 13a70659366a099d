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

  private void fill() {
    int lengthFt = 60 + random.nextInt(600);
    answer("from", pick(SOURCES));
    answer("to", pick(APPLIANCES));
    answer("length", lengthFt + " ft");
    answer("flow", (10 + random.nextInt(random.nextBoolean() ? 150 : 600)) + " gpm");
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
  }

  private String pick(List<String> from) {
    return from.get(random.nextInt(from.size()));
  }

  private void answer(String field, String text) {
    answers.add(field);
    answers.add(text);
  }
}
