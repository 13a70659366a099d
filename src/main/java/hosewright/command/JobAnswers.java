package hosewright.command;

import hosewright.jobfile.JobFile;
import hosewright.line.JobField;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.thread.Families;
import hosewright.thread.Family;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Gathers a job's answers: from its file, from options (which win), or from a person. */
final class JobAnswers {
  private JobAnswers() {}

  /** The options of every command that takes a job. */
  static OptionSpec[] options() {
    List<OptionSpec> options = new ArrayList<>();
    options.add(
        OptionSpec.value("job", "FILE", "a job file; options given beside it win")
            .completingFiles());
    Arrays.stream(JobField.values()).map(JobAnswers::option).forEach(options::add);
    return options.toArray(OptionSpec[]::new);
  }

  private static OptionSpec option(JobField field) {
    OptionSpec option =
        OptionSpec.value(
            field.word(), field.placeholder(), field.meaning() + ", such as " + field.example());
    return switch (field) {
      case FROM, TO -> option.completing(JointCheckCommand::ends);
      case HOSE_THREAD ->
          option.completing(() -> Families.all().stream().map(Family::code).toList());
      case USE -> option.completing("fire", "water", "drinking").withDefaultSaid("water");
      case FLUID -> option.withDefaultSaid("water");
      case STOCK_ONLY -> OptionSpec.flag(field.word(), field.meaning());
      case SLACK -> option.withDefaultSaid("5 %");
      case RISE -> option.withDefaultSaid("on the level");
      case DATE -> option.withDefaultSaid("today");
      default -> option;
    };
  }

  /**
   * The answers for one use of a command.
   *
   * @return empty when a person was asked and broke off
   */
  static Optional<Map<JobField, String>> gather(Invocation in) {
    if (in.bare() && in.asker().isPresent()) {
      return new Interview(in.asker().get()).answers();
    }
    Map<JobField, String> answers = new EnumMap<>(JobField.class);
    in.value("job").ifPresent(file -> answers.putAll(JobFile.read(Path.of(file)).answers()));
    for (JobField field : JobField.values()) {
      if (field == JobField.STOCK_ONLY) {
        if (in.flag(field.word())) {
          answers.put(field, "yes");
        }
      } else {
        in.value(field.word()).ifPresent(value -> answers.put(field, value));
      }
    }
    return Optional.of(answers);
  }
}
