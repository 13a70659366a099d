package hosewright.desk.interview;

import hosewright.intake.JobFile;
import hosewright.job.question.Assumptions;
import hosewright.job.question.JobField;
import hosewright.job.question.Offer;
import hosewright.job.question.Questions;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Asks a person for a job, one question at a time, and shows what the answers come to.
 *
 * <p>Each answer is checked as it is given, alone and with the others. Answers are kept until what
 * they were given for is done: whoever breaks off, is cut off or is refused goes on later.
 */
public final class Interview {
  private static final String HOW =
      "Answer in your own words, or by the letter of a choice. Enter alone keeps what stands or"
          + " leaves a question open, - empties it, ? explains it, ? WORD explains a word, < goes"
          + " back, WORD: ANSWER answers another question, Ctrl-C stops and keeps what you said.";
  private static final Pattern OTHER = Pattern.compile("([a-z][a-z-]*)\\s*:\\s*(.+)");
  private static final String YES = "yes";
  private static final String NO = "no";

  private final Asker asker;
  private final Desk desk;
  private final Choices choices;
  private final AnswerCheck check;
  private final Sketch sketch;
  private final AnswerSheet sheet;
  private final JobKeeper keeper;

  /**
   * @param forQuote whether a customer must be named
   */
  public Interview(Asker asker, Desk desk, boolean forQuote) {
    this.asker = asker;
    this.desk = desk;
    this.choices = new Choices(desk);
    this.check = new AnswerCheck(desk);
    this.sketch = new Sketch(desk.plan());
    this.sheet = new AnswerSheet(new Questions(forQuote));
    this.keeper = new JobKeeper(asker);
  }

  /** Thrown inside when the person presses Ctrl-C; never leaves this room. */
  static final class BrokenOff extends Exception {
    private static final long serialVersionUID = 1L;
  }

  /**
   * The answers, once no question that matters is open and they can be planned together.
   *
   * @return empty when the person broke off
   */
  public Optional<Map<JobField, String>> answers() {
    try {
      asker.say(HOW);
      takeUpDraft();
      Optional<JobField> back = Optional.empty();
      do {
        askAll(back);
        tellAssumptions();
        // Going back from the last question leads to the one asked before it.
        back = keeper.keep(sheet.answers()) ? Optional.empty() : sheet.last();
      } while (back.isPresent());
      return Optional.of(sheet.answers());
    } catch (BrokenOff e) {
      if (!sheet.answers().isEmpty()) {
        asker.say("Your answers are kept; the same command goes on with them.");
      }
      return Optional.empty();
    }
  }

  /** Lets the answers go: what they were given for is done. */
  public void done() {
    JobFile.forget(desk.draft());
  }

  private void takeUpDraft() throws BrokenOff {
    Map<JobField, String> draft = draft();
    if (draft.isEmpty()) {
      return;
    }
    asker.say("You broke off a job:");
    draft.forEach((field, answer) -> asker.say("  " + field.word() + ": " + answer));
    while (true) {
      String said = Lines.ask(asker, "Go on with it? [yes] ", List.of(YES, NO));
      if (said.isEmpty() || YES.startsWith(said.toLowerCase(Locale.ROOT))) {
        draft.forEach(sheet::put);
        tell(standing());
        return;
      }
      if (NO.startsWith(said.toLowerCase(Locale.ROOT))) {
        return;
      }
      asker.say(
          said.startsWith("?")
              ? "  yes goes on with these answers; no begins anew, and the first new answer takes"
                  + " their place."
              : "  yes or no.");
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

  /** Asks until nothing that matters is open and nothing speaks against anything else. */
  private void askAll(Optional<JobField> first) throws BrokenOff {
    Optional<JobField> back = first;
    while (true) {
      Optional<JobField> next = back.or(sheet::next);
      if (next.isEmpty()) {
        next = contradicted(standing());
      }
      if (next.isEmpty()) {
        return;
      }
      back = ask(next.get());
    }
  }

  /** Asks one question until it is answered or left open; gives the question to ask out of turn. */
  private Optional<JobField> ask(JobField field) throws BrokenOff {
    List<Choice> offered = choices.of(field);
    show(field, offered);
    while (true) {
      String text = Lines.ask(asker, prompt(field), Lines.candidates(field, offered));
      Optional<JobField> other = Optional.empty();
      if (text.startsWith("?")) {
        String word = text.substring(1).strip();
        asker.say("  " + Lines.explained(word.isEmpty() ? field.word() : word));
      } else if (text.equals("<")) {
        other = sheet.before(field);
        if (other.isEmpty()) {
          asker.say("  This is the first question.");
        }
      } else if (text.isEmpty() || text.equals("-")) {
        if (open(field, text.isEmpty())) {
          return Optional.empty();
        }
      } else {
        Optional<AnswerCheck.Read> read = read(field, text, offered);
        if (read.isPresent()) {
          other = take(read.get());
          boolean same =
              read.get().field().equals(field) || read.get().field().equals(JobField.ROUTE);
          if (other.isEmpty() && same) {
            return Optional.empty();
          }
        }
      }
      if (other.isPresent()) {
        return other;
      }
    }
  }

  /** Leaves a question as it stands, or empty; false where it must not be empty. */
  private boolean open(JobField field, boolean asItStands) {
    if (asItStands && sheet.answer(field).isPresent()) {
      sheet.asked(field);
      return true;
    }
    if (sheet.needs(field)) {
      asker.say("  This one is needed, such as " + field.example() + ".");
      return false;
    }
    boolean emptied = sheet.answer(field).isPresent();
    sheet.leaveOpen(field);
    if (emptied) {
      JobFile.keep(desk.draft(), sheet.answers());
      tell(standing());
    }
    return true;
  }

  /** What was typed as an answer, to this question or to the one it names; tells why it is none. */
  private Optional<AnswerCheck.Read> read(JobField field, String text, List<Choice> offered) {
    Matcher named = OTHER.matcher(text);
    Optional<JobField> other =
        named.matches() ? JobField.of(named.group(1)) : Optional.<JobField>empty();
    try {
      return Optional.of(
          other.isPresent()
              ? check.read(other.get(), named.group(2))
              : check.read(field, Choice.picked(text, offered).orElse(text)));
    } catch (BadInputException e) {
      tell(e.problems());
      return Optional.empty();
    }
  }

  /**
   * Keeps an answer that goes with the others.
   *
   * @return the question to go to because this answer speaks against what was said there; itself
   *     where the answer is refused
   */
  private Optional<JobField> take(AnswerCheck.Read read) {
    Map<JobField, String> now = sheet.with(read.field(), read.answer());
    Sketch.Standing standing = sketch.of(now, sheet.isWhole(now));
    List<Problem> own = Lines.about(read.field(), standing.problems());
    if (!own.isEmpty()) {
      tell(own);
      return Optional.of(read.field());
    }
    sheet.put(read.field(), read.answer());
    JobFile.keep(desk.draft(), sheet.answers());
    Optional<JobField> contradicted = contradicted(standing);
    tell(contradicted.isPresent() ? new Sketch.Standing("", List.of()) : standing);
    return contradicted;
  }

  /** The question whose answer speaks against another, once that was told. */
  private Optional<JobField> contradicted(Sketch.Standing standing) {
    Optional<JobField> field =
        standing.problems().stream()
            .flatMap(problem -> JobField.of(problem.field()).stream())
            .findFirst();
    field.ifPresent(one -> tell(Lines.about(one, standing.problems())));
    return field;
  }

  private Sketch.Standing standing() {
    Map<JobField, String> now = sheet.answers();
    return sketch.of(now, sheet.isWhole(now));
  }

  private void show(JobField field, List<Choice> offered) {
    asker.say("");
    asker.say(field.question());
    for (int i = 0; i < offered.size(); i++) {
      asker.say("  " + Choice.letter(i) + ") " + offered.get(i).shown());
    }
    if (field.offer() == Offer.CUSTOMERS && desk.customers().size() > offered.size()) {
      asker.say(
          "  and "
              + (desk.customers().size() - offered.size())
              + " more: type a name or how it begins");
    }
  }

  private String prompt(JobField field) {
    Optional<String> before = sheet.answer(field);
    Optional<String> mayStayOpen =
        before.isPresent() || sheet.needs(field) ? Optional.empty() : Optional.of("may stay open");
    Optional<String> unit = before.isPresent() ? Optional.empty() : field.unit();
    String told = String.join(", ", Stream.concat(unit.stream(), mayStayOpen.stream()).toList());
    return field.word()
        + before.map(answer -> " [" + answer + "]").orElse("")
        + (told.isEmpty() ? "" : " (" + told + ")")
        + ": ";
  }

  private void tell(List<Problem> problems) {
    problems.forEach(problem -> asker.say("  " + problem.sentence()));
  }

  private void tell(Sketch.Standing standing) {
    if (!standing.words().isEmpty()) {
      asker.say("  " + standing.words());
    }
    tell(standing.problems());
  }

  private void tellAssumptions() {
    List<String> assumed = Assumptions.of(sheet.answers());
    asker.say("");
    if (!assumed.isEmpty()) {
      asker.say("Taken for granted: " + String.join("; ", assumed) + ".");
    }
  }
}
