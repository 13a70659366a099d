package hosewright.desk.interview;

import hosewright.intake.JobFile;
import hosewright.intake.RouteFile;
import hosewright.job.JobForm;
import hosewright.job.question.Answers;
import hosewright.job.question.Assumptions;
import hosewright.job.question.Glossary;
import hosewright.job.question.JobField;
import hosewright.job.question.Offer;
import hosewright.job.question.Questions;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Asks a person for a job, one question at a time, and shows what the answers come to.
 *
 * <p>Answers are kept as they are given: whoever breaks off, or is cut off, goes on later.
 */
public final class Interview {
  private static final String HOW =
      "Answer in your own words, or by the letter of a choice. Enter alone leaves a question open,"
          + " ? explains it, ? WORD explains a word, < goes back, Ctrl-C stops and keeps what you"
          + " said.";

  private final Asker asker;
  private final Desk desk;
  private final Questions questions;
  private final Choices choices;
  private final Sketch sketch;
  private final Map<JobField, String> answers = new TreeMap<>();
  private final Set<JobField> passed = new HashSet<>();
  private final Deque<JobField> asked = new ArrayDeque<>();

  /**
   * @param forQuote whether a customer must be named
   */
  public Interview(Asker asker, Desk desk, boolean forQuote) {
    this.asker = asker;
    this.desk = desk;
    this.questions = new Questions(forQuote);
    this.choices = new Choices(desk);
    this.sketch = new Sketch(desk.plan());
  }

  /** Thrown inside when the person presses Ctrl-C; never leaves this class. */
  private static final class BrokenOff extends Exception {
    private static final long serialVersionUID = 1L;
  }

  /**
   * The answers, once no question that matters is open.
   *
   * @return empty when the person broke off
   */
  public Optional<Map<JobField, String>> answers() {
    try {
      asker.say(HOW);
      takeUpDraft();
      askAll();
      tellAssumptions();
      keepAsFile();
      JobFile.forget(desk.draft());
      return Optional.of(answers);
    } catch (BrokenOff e) {
      if (!answers.isEmpty()) {
        asker.say("Your answers are kept; the same command goes on with them.");
      }
      return Optional.empty();
    }
  }

  private void takeUpDraft() throws BrokenOff {
    Map<JobField, String> draft = draft();
    if (draft.isEmpty()) {
      return;
    }
    asker.say("You broke off a job:");
    draft.forEach((field, answer) -> asker.say("  " + field.word() + ": " + answer));
    if (yes(ask("Go on with it? [yes] ", List.of("yes", "no")))) {
      answers.putAll(draft);
      asked.addAll(draft.keySet());
      showSketch();
    }
  }

  private Map<JobField, String> draft() {
    if (!Files.exists(desk.draft())) {
      return Map.of();
    }
    try {
      return JobFile.read(desk.draft()).answers();
    } catch (BadInputException e) {
      // A draft that somebody has edited into something else is not worth a refusal.
      return Map.of();
    }
  }

  private void askAll() throws BrokenOff {
    Optional<JobField> back = Optional.empty();
    while (true) {
      Optional<JobField> next = back.or(() -> questions.next(answers, passed));
      if (next.isEmpty()) {
        return;
      }
      back = ask(next.get());
    }
  }

  /** Asks one question until it is answered or left open; gives the question to go back to. */
  private Optional<JobField> ask(JobField field) throws BrokenOff {
    List<String> offered = choices.of(field);
    String prompt = prompt(field);
    show(field, offered);
    while (true) {
      String text = ask(prompt, offered.isEmpty() ? List.of(field.example()) : offered);
      if (text.startsWith("?")) {
        explain(field, text.substring(1).strip());
      } else if (text.equals("<")) {
        return Optional.of(asked.isEmpty() ? field : asked.removeLast());
      } else if (text.isEmpty()
          && (answers.containsKey(field) || !questions.needed(field, answers))) {
        passed.add(field);
        asked.addLast(field);
        return Optional.empty();
      } else if (text.isEmpty()) {
        asker.say("  This one is needed, such as " + field.example() + ".");
      } else if (take(field, meant(text, offered))) {
        asked.addLast(field);
        return Optional.empty();
      }
    }
  }

  private void show(JobField field, List<String> offered) {
    asker.say("");
    asker.say(field.asking().question());
    for (int i = 0; i < offered.size(); i++) {
      asker.say("  " + letter(i) + ") " + offered.get(i));
    }
  }

  private String prompt(JobField field) {
    String before = answers.getOrDefault(field, "");
    return field.word()
        + (before.isEmpty() ? "" : " [" + before + "]")
        + (before.isEmpty() && !questions.needed(field, answers) ? " (may stay open)" : "")
        + ": ";
  }

  private static String letter(int place) {
    return String.valueOf((char) ('a' + place));
  }

  /** Letters stand for choices; several may be given with commas. */
  private static String meant(String text, List<String> offered) {
    List<String> said = new ArrayList<>();
    for (String part : text.split(",")) {
      int place = part.strip().length() == 1 ? part.strip().charAt(0) - 'a' : -1;
      if (place < 0 || place >= offered.size()) {
        return text;
      }
      said.add(offered.get(place));
    }
    return String.join(", ", said);
  }

  private void explain(JobField field, String word) {
    asker.say(
        word.isEmpty()
            ? "  " + field.word() + ": " + field.meaning() + ", such as " + field.example() + "."
            : "  " + Glossary.explain(word));
  }

  /** Whoever has surveyed the way names its file where others say how far it is. */
  private boolean take(JobField asked, String said) {
    JobField field =
        asked.equals(JobField.LENGTH) && RouteFile.isNamed(said) ? JobField.ROUTE : asked;
    try {
      return keep(field, RouteFile.putInto(Map.of(field, said), Optional.empty()).get(field));
    } catch (BadInputException e) {
      e.problems().forEach(problem -> asker.say("  " + problem.sentence()));
      return false;
    }
  }

  private boolean keep(JobField field, String answer) {
    List<Problem> problems = JobForm.problemsOf(field, answer);
    if (field.offer() == Offer.CUSTOMERS && !desk.customers().contains(answer)) {
      problems =
          List.of(
              new Problem(
                  field.word(),
                  answer,
                  "one of " + String.join(", ", desk.customers()),
                  Nearest.to(answer, desk.customers())));
    }
    if (!problems.isEmpty()) {
      problems.forEach(problem -> asker.say("  " + problem.sentence()));
      return false;
    }
    Map<JobField, String> now = Answers.over(answers, Map.of(field, answer));
    answers.clear();
    answers.putAll(now);
    passed.remove(field);
    JobFile.keep(desk.draft(), answers);
    showSketch();
    return true;
  }

  private void showSketch() {
    String stands = sketch.of(answers);
    if (!stands.isEmpty()) {
      asker.say("  " + stands);
    }
  }

  private void tellAssumptions() {
    List<String> assumed = Assumptions.of(answers);
    asker.say("");
    if (!assumed.isEmpty()) {
      asker.say("Taken for granted: " + String.join("; ", assumed) + ".");
    }
  }

  private void keepAsFile() throws BrokenOff {
    while (true) {
      String name =
          ask("Keep the job as a file? A name such as " + suggestion() + ", or Enter: ", List.of());
      if (name.isEmpty()) {
        return;
      }
      try {
        Path file = JobFile.named(name);
        JobFile.save(file, answers);
        asker.say("  Kept in " + file + "; --job " + file + " plans it again.");
        return;
      } catch (InvalidPathException e) {
        asker.say("  '" + name + "' cannot be the name of a file.");
      } catch (BadInputException e) {
        asker.say("  " + e.getMessage());
      }
    }
  }

  private String suggestion() {
    String title = answers.getOrDefault(JobField.TITLE, "my job");
    String name = title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String folder = Files.isDirectory(Path.of("quotes")) ? "quotes/" : "";
    return folder + name.replaceAll("^-|-$", "") + ".yaml";
  }

  private static boolean yes(String text) {
    return text.isEmpty() || text.toLowerCase(Locale.ROOT).startsWith("y");
  }

  private String ask(String prompt, List<String> candidates) throws BrokenOff {
    return asker.answer(prompt, candidates).map(String::strip).orElseThrow(BrokenOff::new);
  }
}
