package hosewright.thread;

import hosewright.csv.PlainNumber;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Chooses the one question whose answer would best tell the leading candidates apart. */
final class NextQuestion {
  private static final double CLEAR_LEAD = 0.9;
  private static final double LEADS = 0.05;

  /** Half a thread per inch is easily miscounted over one inch. */
  private static final double CLOSE_TPI = 0.5;

  private NextQuestion() {}

  static String after(Measurement measurement, List<Candidate> ranked) {
    if (ranked.isEmpty()) {
      return "Nothing listed measures this: is it a male thread, measured over the crests of"
          + " undamaged threads?";
    }
    if (ranked.get(0).likelihood() >= CLEAR_LEAD) {
      return "";
    }
    List<Candidate> leaders = ranked.stream().filter(c -> c.likelihood() >= LEADS).toList();
    return questions(measurement, leaders).stream()
        .filter(q -> q.gain() > 0)
        .max(Comparator.comparingDouble(Question::gain))
        .map(Question::text)
        .orElse("Read the stencil on the part, or measure the mate of this end: it is not sure.");
  }

  private static List<Question> questions(Measurement measurement, List<Candidate> leaders) {
    List<Question> questions = new ArrayList<>();
    if (measurement.threadsPerInch().isEmpty()) {
      questions.add(threadCount(leaders));
    }
    if (measurement.taper().isEmpty()) {
      questions.add(
          question(
              "Lay a straight edge along the threads: ",
              leaders,
              c -> Identification.tapers(c.dimensions()) ? "tapering" : "straight",
              0.9));
    }
    questions.add(
        question(
            "Hold a thread gauge to the flanks: ",
            leaders,
            c -> PlainNumber.of(family(c).figures().formAngleDeg().orElseThrow()) + " degrees",
            0.5));
    if (leaders.stream().map(c -> c.end().family()).distinct().count() == 1) {
      questions.add(
          question(
              "Measure the waterway inside: about ",
              leaders,
              c -> PlainNumber.of(c.end().sizeIn()) + " in",
              0.7));
    }
    if (measurement.stencil().isBlank()) {
      questions.add(
          question(
              "Read the stencil, or ask where it is from: ", leaders, c -> c.end().family(), 0.4));
    }
    return questions;
  }

  private static Question threadCount(List<Candidate> leaders) {
    List<Double> counts =
        leaders.stream().map(Candidate::threadsPerInch).distinct().sorted().toList();
    boolean close = false;
    for (int i = 1; i < counts.size(); i++) {
      close |= counts.get(i) - counts.get(i - 1) <= CLOSE_TPI;
    }
    return question(
        close
            ? "Count the threads with a thread gauge, or over two inches and halve it: "
            : "Count the threads in one inch: ",
        leaders,
        c -> PlainNumber.of(c.threadsPerInch()),
        close ? 0.8 : 1);
  }

  private static Question question(
      String opening, List<Candidate> leaders, Function<Candidate, String> answer, double trust) {
    Map<String, List<Candidate>> answers =
        leaders.stream().collect(Collectors.groupingBy(answer, TreeMap::new, Collectors.toList()));
    String text =
        answers.entrySet().stream()
            .sorted(Comparator.comparing(e -> -weight(e.getValue())))
            .map(e -> e.getKey() + " is " + Identification.names(e.getValue()))
            .collect(Collectors.joining(", ", opening, "."));
    return new Question(text, trust * entropy(answers, weight(leaders)));
  }

  private static double entropy(Map<String, List<Candidate>> answers, double all) {
    return answers.values().stream()
        .mapToDouble(c -> weight(c) / all)
        .map(share -> -share * Math.log(share))
        .sum();
  }

  private static double weight(List<Candidate> candidates) {
    return candidates.stream().mapToDouble(Candidate::likelihood).sum();
  }

  private static Family family(Candidate candidate) {
    return Families.ofCode(candidate.end().family()).orElseThrow();
  }

  /**
   * A question and what its answer is worth.
   *
   * @param text the question with what each answer would mean
   * @param gain expected information in nats, less what is lost to wrong answers
   */
  private record Question(String text, double gain) {}
}
