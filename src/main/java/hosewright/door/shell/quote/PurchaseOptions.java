package hosewright.door.shell.quote;

import hosewright.desk.Books;
import hosewright.desk.interview.Asker;
import hosewright.desk.purchase.AskedPurchase;
import hosewright.desk.purchase.ReadPurchase;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.line.JobAnswers;
import hosewright.job.question.JobField;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** The options that ask for several jobs, or parts, in one quote. */
final class PurchaseOptions {
  private static final String ASK = "ask-parts";
  private static final Set<JobField> OF_THE_WHOLE = Set.of(JobField.CUSTOMER, JobField.TITLE);

  private PurchaseOptions() {}

  /** Those of a job, of which there may be several files, and those of a purchase. */
  static OptionSpec[] options(Supplier<Books> books) {
    Stream<OptionSpec> ofJobs =
        Arrays.stream(JobAnswers.options(books))
            .map(option -> option.name().equals("job") ? option.asRepeatable() : option);
    return Stream.concat(
            ofJobs,
            Stream.of(
                OptionSpec.value(
                        "package", "FILE", "a package file: jobs, parts and kits in one quote")
                    .completingFiles(),
                OptionSpec.value(
                        "add",
                        "WHAT",
                        "a part: '20 x ITEM', words that fit one item, or '1 x Crating @ 35.00'")
                    .asRepeatable(),
                OptionSpec.value("parts", "FILE", "parts from a text file, one a line")
                    .completingFiles(),
                OptionSpec.value("kit", "NAME", "the parts of a kit; see kit show").asRepeatable(),
                OptionSpec.flag(ASK, "be asked for parts, one after another")))
        .toArray(OptionSpec[]::new);
  }

  /** Whether more is asked for than one job. */
  static boolean isPurchase(Invocation in) {
    return in.values("job").size() > 1
        || Stream.of("package", "add", "parts", "kit", ASK).anyMatch(in::given);
  }

  /**
   * What is asked for.
   *
   * @throws BadInputException naming options that speak of one job, and everything else amiss
   */
  static AskedPurchase asked(Invocation in) {
    List<Problem> problems =
        JobField.values().stream()
            .filter(field -> !OF_THE_WHOLE.contains(field) && in.given(field.word()))
            .map(
                field ->
                    Problem.of(
                        field.word(),
                        in.value(field.word()).orElse("yes"),
                        "an answer in the job file it is for: a purchase has several groups"))
            .toList();
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    List<String> parts = new ArrayList<>(in.values("add"));
    if (in.flag(ASK)) {
      parts.addAll(askedFor(in.asker()));
    }
    return new ReadPurchase()
        .read(
            new ReadPurchase.Sources(
                in.value("package"), in.values("job"), in.value("parts"), parts, in.values("kit")),
            in.value(JobField.TITLE.word()),
            in.value(JobField.CUSTOMER.word()));
  }

  private static List<String> askedFor(Optional<Asker> asker) {
    Asker person =
        asker.orElseThrow(
            () ->
                new BadInputException(
                    ASK, "yes", "somebody at a terminal; in a script say --add or --parts"));
    List<String> parts = new ArrayList<>();
    person.say("How many of what? Such as 4 x nozzle 1.5 NH 150 gpm. Enter alone ends the list.");
    while (true) {
      String answer = person.answer("part " + (parts.size() + 1) + ": ", List.of()).orElse("");
      if (answer.isBlank()) {
        return parts;
      }
      parts.add(answer);
    }
  }
}
