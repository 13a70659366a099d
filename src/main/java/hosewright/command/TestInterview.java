package hosewright.command;

import hosewright.fleet.Outcome;
import hosewright.problem.BadInputException;
import hosewright.shell.Asker;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Asks a person for a day's service records, section by section. A question mark explains the
 * question; an empty section ends.
 */
final class TestInterview {
  private static final String HINT = "? explains, an empty section ends, Ctrl-C throws all away.\n";

  private final Asker asker;
  private final Set<String> sections;
  private final LocalDate today;

  TestInterview(Asker asker, Set<String> sections, LocalDate today) {
    this.asker = asker;
    this.sections = sections;
    this.today = today;
  }

  /**
   * The answers as rows of a records file, columns as in its form.
   *
   * @return empty when the person broke off
   */
  Optional<List<List<String>>> rows() {
    Optional<String> date = ask(HINT + "date [" + today + "]: ", "the day of the tests", this::day);
    if (date.isEmpty()) {
      return Optional.empty();
    }
    String day = date.get().isEmpty() ? today.toString() : date.get();
    List<List<String>> rows = new ArrayList<>();
    while (true) {
      Optional<String> section = ask("section: ", "what is stencilled on it", this::known);
      if (section.isEmpty()) {
        return Optional.empty();
      }
      if (section.get().isEmpty()) {
        return Optional.of(rows);
      }
      Optional<List<String>> row = row(section.get(), day);
      if (row.isEmpty()) {
        return Optional.empty();
      }
      rows.add(row.get());
    }
  }

  private Optional<List<String>> row(String section, String day) {
    Optional<String> outcome =
        ask(
            "outcome [pass]: ",
            String.join(", ", Outcome.byWord().keySet()),
            word -> word.isEmpty() || Outcome.byWord().containsKey(word) ? "" : "no such outcome");
    if (outcome.isEmpty()) {
      return Optional.empty();
    }
    String word = outcome.get().isEmpty() ? "pass" : outcome.get();
    boolean tested = Outcome.of(word).tested();
    Optional<String> psi = tested ? number("test pressure, psi: ") : Optional.of("");
    Optional<String> hold = psi.flatMap(p -> tested ? number("held, minutes: ") : Optional.of(""));
    Optional<String> length =
        hold.flatMap(h -> tested ? Optional.of("") : number("length now, ft: "));
    return length.map(
        feet -> List.of(section, day, word, psi.orElse(""), hold.orElse(""), feet, ""));
  }

  private Optional<String> number(String prompt) {
    return ask(
        prompt,
        "a number, or nothing",
        text -> text.matches("(\\d{1,4}(\\.\\d{1,2})?)?") ? "" : "a number such as 300");
  }

  /** Asks until the answer is right; empty when the person broke off. */
  private Optional<String> ask(String prompt, String meaning, UnaryOperator<String> objection) {
    String said = "";
    while (true) {
      Optional<String> answer = asker.ask(said + prompt, candidates(prompt));
      if (answer.isEmpty()) {
        return Optional.empty();
      }
      String text = answer.get().strip();
      String wrong = text.equals("?") ? meaning : objection.apply(text);
      if (wrong.isEmpty()) {
        return Optional.of(text);
      }
      said = "  " + wrong + "\n";
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
      return text.isEmpty() || !FleetOptions.day("date", text).isAfter(today)
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
