package hosewright.door.shell.fleet;

import hosewright.csv.PlainNumber;
import hosewright.desk.fleet.FleetWords;
import hosewright.desk.interview.Asker;
import hosewright.fleet.record.Outcome;
import hosewright.problem.BadInputException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Asks a person for a day's service records, section by section. A question mark explains the
 * question, a less-than sign drops the section being entered, an empty section ends.
 */
final class TestInterview {
  private static final String HINT =
      "? explains, < goes back to the section, an empty section ends, Ctrl-C throws all away.";

  private final Asker asker;
  private final Set<String> sections;
  private final LocalDate today;
  private final double leastHoldMinutes;

  /**
   * @param leastHoldMinutes how long a test must be held to be passed, minutes
   */
  TestInterview(Asker asker, Set<String> sections, LocalDate today, double leastHoldMinutes) {
    this.asker = asker;
    this.sections = sections;
    this.today = today;
    this.leastHoldMinutes = leastHoldMinutes;
  }

  /**
   * The answers as rows of a records file, columns as in its form.
   *
   * @return empty when the person broke off
   */
  Optional<List<List<String>>> rows() {
    asker.say(HINT);
    Optional<String> date = ask("date [" + today + "]: ", "the day of the tests", this::day);
    if (date.isEmpty()) {
      return Optional.empty();
    }
    String day = date.get().isEmpty() ? today.toString() : date.get();
    List<List<String>> rows = new ArrayList<>();
    while (true) {
      Optional<String> section = ask("section: ", "what is stencilled on it", this::known);
      if (section.isEmpty() || section.get().isEmpty()) {
        return section.map(ended -> rows);
      }
      List<String> row = new ArrayList<>(List.of(section.get(), day));
      Entry entry = enter(row);
      if (entry == Entry.BROKEN_OFF) {
        return Optional.empty();
      }
      if (entry == Entry.WHOLE) {
        rows.add(List.copyOf(row));
      }
    }
  }

  /** How entering one section ended. */
  private enum Entry {
    WHOLE,
    DROPPED,
    BROKEN_OFF
  }

  /**
   * One question after the other; a failed test is not held, and only a repair has a new length.
   */
  private Entry enter(List<String> row) {
    Entry outcome = take(row, ask("outcome [pass]: ", words(), TestInterview::outcome));
    if (outcome != Entry.WHOLE) {
      return outcome;
    }
    String word = row.get(2).isEmpty() ? "pass" : row.get(2);
    row.set(2, word);
    boolean tested = Outcome.of(word).tested();
    List<String> prompts =
        List.of(
            tested ? "test pressure, psi: " : "",
            word.equals("pass") ? "held, minutes: " : "",
            Outcome.of(word).effect() == Outcome.Effect.REPAIR ? "length now, ft: " : "");
    for (String prompt : prompts) {
      Entry entry = take(row, prompt.isEmpty() ? Optional.of("") : number(prompt));
      if (entry != Entry.WHOLE) {
        return entry;
      }
    }
    row.add("");
    return Entry.WHOLE;
  }

  private static Entry take(List<String> row, Optional<String> answer) {
    if (answer.isEmpty()) {
      return Entry.BROKEN_OFF;
    }
    row.add(answer.get());
    return answer.get().equals("<") ? Entry.DROPPED : Entry.WHOLE;
  }

  private static String words() {
    return String.join(", ", Outcome.byWord().keySet());
  }

  private static String outcome(String word) {
    boolean known = word.isEmpty() || Outcome.byWord().containsKey(word);
    return known ? "" : "one of " + words();
  }

  private Optional<String> number(String prompt) {
    return ask(prompt, "a number, or nothing", text -> numberObjection(prompt, text));
  }

  private String numberObjection(String prompt, String text) {
    if (!text.matches("(\\d{1,4}(\\.\\d{1,2})?)?")) {
      return "a number such as 300";
    }
    boolean tooShort =
        prompt.startsWith("held") && !text.isEmpty() && Double.parseDouble(text) < leastHoldMinutes;
    return tooShort
        ? "at least " + PlainNumber.of(leastHoldMinutes) + " minutes for a passed test; < drops it"
        : "";
  }

  /** Asks until the answer is right; empty when the person broke off. */
  private Optional<String> ask(String prompt, String meaning, UnaryOperator<String> objection) {
    while (true) {
      Optional<String> answer = asker.answer(prompt, candidates(prompt));
      if (answer.isEmpty()) {
        return Optional.empty();
      }
      String text = answer.get().strip();
      boolean back =
          text.equals("<") && !prompt.startsWith("date") && !prompt.startsWith("section");
      String wrong = text.equals("?") ? meaning : objection.apply(text);
      if (back || wrong.isEmpty()) {
        return Optional.of(text);
      }
      asker.say("  " + wrong);
    }
  }

  private List<String> candidates(String prompt) {
    if (prompt.startsWith("section")) {
      return sections.stream().sorted().limit(1_000).toList();
    }
    return prompt.startsWith("outcome") ? List.copyOf(Outcome.byWord().keySet()) : List.of();
  }

  private String day(String text) {
    try {
      return text.isEmpty() || !FleetWords.day("date", text).isAfter(today)
          ? ""
          : "not after today, " + today;
    } catch (BadInputException e) {
      return e.problems().get(0).allowed();
    }
  }

  private String known(String text) {
    return text.isEmpty() || sections.contains(text) ? "" : "no section '" + text + "' on record";
  }
}
