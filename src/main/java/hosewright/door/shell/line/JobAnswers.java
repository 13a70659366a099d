package hosewright.door.shell.line;

import hosewright.catalogue.ItemKind;
import hosewright.desk.Books;
import hosewright.desk.NamedPath;
import hosewright.desk.interview.Asker;
import hosewright.desk.interview.Desk;
import hosewright.desk.interview.Interview;
import hosewright.desk.line.PrepareJob;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.end.JointCheckCommand;
import hosewright.door.shell.option.CatalogueChoice;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.words.ShownUnits;
import hosewright.intake.JobFile;
import hosewright.intake.JobText;
import hosewright.intake.RouteFile;
import hosewright.job.layout.LayoutText;
import hosewright.job.question.Answers;
import hosewright.job.question.JobField;
import hosewright.job.question.Offer;
import hosewright.problem.RefusalException;
import hosewright.thread.Families;
import hosewright.thread.Family;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Gathers a job's answers: from its file, from options (which win), or from a person. */
public final class JobAnswers {
  /** Nominal sizes that hose is commonly sold in. Common practice, no source. */
  private static final List<String> USUAL_SIZES =
      Stream.of("0.75", "1", "1.5", "1.75", "2", "2.5", "3", "4", "5", "6")
          .map(size -> size + "in")
          .toList();

  private static final String KEPT = "Your answers are kept; the same command goes on with them.";

  /** Options that say how to answer, and nothing of the job. */
  private static final String[] ONLY_HOW =
      Stream.concat(Stream.of(ShownUnits.NAME, WorkingText.NAME), Stream.of(PlanSections.names()))
          .toArray(String[]::new);

  private JobAnswers() {}

  /**
   * The options of every command that takes a job.
   *
   * @param books where the customers offered on the tab key are kept
   */
  public static OptionSpec[] options(Supplier<Books> books) {
    List<OptionSpec> options = new ArrayList<>();
    options.add(
        OptionSpec.value("job", "FILE", "a job file; options given beside it win")
            .completingFiles());
    for (JobField field : JobField.values()) {
      options.add(
          field.offer() == Offer.CUSTOMERS
              ? option(field).completing(() -> CatalogueChoice.customers(books))
              : option(field));
    }
    return options.toArray(OptionSpec[]::new);
  }

  /** The options of a command that changes a job already quoted: its buyer and day stay. */
  public static OptionSpec[] changes() {
    return JobField.values().stream()
        .filter(field -> !field.stays())
        .map(JobAnswers::option)
        .toArray(OptionSpec[]::new);
  }

  private static List<String> accessories() {
    return Arrays.stream(ItemKind.values())
        .filter(ItemKind::isAccessory)
        .map(ItemKind::word)
        .toList();
  }

  /** The answers that are to be different; an empty value takes an answer away. */
  public static Map<JobField, String> changed(Invocation in) {
    Map<JobField, String> answers = new TreeMap<>();
    for (JobField field : JobField.values()) {
      if (!field.stays()) {
        typed(in, field).ifPresent(value -> answers.put(field, value));
      }
    }
    return RouteFile.putInto(answers, Optional.empty());
  }

  /** What was typed for a field; a flag says yes. */
  private static Optional<String> typed(Invocation in, JobField field) {
    return field.isFlag()
        ? Optional.of("yes").filter(yes -> in.flag(field.word()))
        : in.value(field.word());
  }

  private static OptionSpec option(JobField field) {
    if (field.isFlag()) {
      return OptionSpec.flag(field.word(), field.meaning());
    }
    OptionSpec option =
        OptionSpec.value(
                field.word(), field.placeholder(), field.meaning() + ", such as " + field.example())
            .withDefaultSaid(field.whenOpen().said());
    return switch (field.offer()) {
      case SOURCES, APPLIANCES -> option.completing(JointCheckCommand::ends);
      case FAMILIES -> option.completing(() -> Families.all().stream().map(Family::code).toList());
      case SIZES -> option.completingList(() -> USUAL_SIZES);
      case ACCESSORIES -> option.completingList(JobAnswers::accessories);
      case NOTHING, CUSTOMERS, DISTRICTS -> option.completing(() -> field.choices());
    };
  }

  /**
   * What comes of the answers for one use of a command of one line.
   *
   * @param undone what is said where a person was asked and broke off
   */
  public static Answer answered(
      Invocation in,
      Supplier<Books> books,
      String undone,
      Function<Map<JobField, String>, Answer> deed) {
    return layoutAnswered(in, books, false, undone, layout -> deed.apply(JobText.oneLine(layout)));
  }

  /**
   * The same for a command that plans layouts too: the answers, and the legs that a job file lists.
   *
   * @param forQuote whether a customer must be named
   */
  public static Answer layoutAnswered(
      Invocation in,
      Supplier<Books> books,
      boolean forQuote,
      String undone,
      Function<LayoutText, Answer> deed) {
    if (in.bare(ONLY_HOW) && in.asker().isPresent()) {
      return asked(in.asker().get(), new PrepareJob(books).prepare(), forQuote, undone, deed);
    }
    return deed.apply(typed(in));
  }

  /** Answers asked for are kept until what they were given for is done. */
  private static Answer asked(
      Asker asker, Desk desk, boolean forQuote, String undone, Function<LayoutText, Answer> deed) {
    Interview interview = new Interview(asker, desk, forQuote);
    Optional<LayoutText> answers = interview.answers().map(LayoutText::oneLine);
    if (answers.isEmpty()) {
      return Answer.of(Map.of(), undone);
    }
    try {
      Answer answer = deed.apply(answers.get());
      if (answer.exitCode() == Answer.DONE) {
        interview.done();
        return answer;
      }
      return answer.with(KEPT);
    } catch (RefusalException e) {
      asker.say(KEPT);
      throw e;
    }
  }

  private static LayoutText typed(Invocation in) {
    Optional<LayoutText> file =
        in.value("job")
            .map(
                name -> JobFile.read(NamedPath.of("job", name, "the name of a job file")).layout());
    Map<JobField, String> options = new TreeMap<>();
    for (JobField field : JobField.values()) {
      typed(in, field).ifPresent(value -> options.put(field, value));
    }
    Map<JobField, String> answers =
        RouteFile.putInto(
            Answers.over(file.map(LayoutText::answers).orElse(Map.of()), options),
            Optional.empty());
    return file.orElse(LayoutText.oneLine(Map.of())).saying(answers);
  }
}
