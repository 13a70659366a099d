package hosewright.command;

import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.shell.Answer;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.Screen;
import hosewright.shell.ShellCommand;
import hosewright.shell.Table;
import hosewright.thread.End;
import hosewright.thread.Families;
import hosewright.thread.Family;
import hosewright.thread.Gender;
import hosewright.thread.ThreadDimensions;
import hosewright.thread.ThreadTable;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Lists thread and coupling families with the sizes they are made in. */
final class EndListCommand extends ShellCommand {

  EndListCommand() {
    super(
        CommandSpec.of(
                "end list",
                Group.IDENTIFY,
                "Lists thread and coupling families, or the ends of one family",
                "end list NH")
            .alias("ends")
            .with(
                ArgumentSpec.optional("FAMILY", "one family, for its sizes and figures")
                    .completing(() -> Families.all().stream().map(Family::code).toList())));
  }

  record FamilyRow(String family, String name, String kind, List<Double> sizesIn, String source) {}

  /** An end with what its male measures; null where no figure is held. */
  record EndRow(
      String end, Double majorDiameterIn, Double threadsPerInch, String standard, String source) {}

  record Listed(List<FamilyRow> families, List<EndRow> ends) {}

  @Override
  protected Answer answer(Invocation in) {
    if (in.argument(0).isEmpty()) {
      return families();
    }
    String named = in.argument(0).get();
    return ends(Families.find(named).orElseThrow(() -> unknown(named)));
  }

  private static BadInputException unknown(String named) {
    List<String> codes = Families.all().stream().map(Family::code).toList();
    return new BadInputException(
        List.of(
            new Problem(
                "family", named, "one of " + String.join(", ", codes), Nearest.to(named, codes))));
  }

  private static Answer families() {
    List<FamilyRow> rows =
        Families.all().stream()
            .map(
                family ->
                    new FamilyRow(
                        family.code(),
                        family.name(),
                        family.kind().word(),
                        family.sizesIn(),
                        family.source()))
            .toList();
    return Answer.of(
        new Listed(rows, List.of()),
        screen -> {
          Table table = Table.of("family", "name", "kind", "sizes, in");
          for (FamilyRow row : rows) {
            table.row(row.family(), row.name(), row.kind(), sizes(row.sizesIn()));
          }
          return table.on(screen)
              + "\nSizes are nominal, never measured. 'end list NH' shows more.";
        });
  }

  private static Answer ends(Family family) {
    List<EndRow> rows =
        Families.ends().stream()
            .filter(end -> end.family().equals(family.code()) && !end.swivel())
            .map(EndListCommand::row)
            .toList();
    FamilyRow head =
        new FamilyRow(
            family.code(), family.name(), family.kind().word(), family.sizesIn(), family.source());
    return Answer.of(new Listed(List.of(head), rows), screen -> text(family, rows, screen));
  }

  private static EndRow row(End end) {
    Optional<ThreadDimensions> figures = ThreadTable.find(end);
    return new EndRow(
        end.toString(),
        end.gender() == Gender.FEMALE
            ? null
            : figures.flatMap(f -> boxed(f.majorMaxIn())).orElse(null),
        figures.flatMap(f -> boxed(f.threadsPerInch())).orElse(null),
        figures.map(held -> held.origin().standard()).orElse(""),
        figures.map(held -> held.origin().source()).orElse(""));
  }

  private static String text(Family family, List<EndRow> rows, Screen screen) {
    Table table =
        Table.of("end", "male measures, in", "threads per inch", "standard").numbers(1, 2);
    for (EndRow row : rows) {
      table.row(
          row.end(), figure(row.majorDiameterIn()), figure(row.threadsPerInch()), row.standard());
    }
    return family.name() + ", " + family.kind().word() + "\n" + table.on(screen);
  }

  private static Optional<Double> boxed(OptionalDouble number) {
    return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
  }

  private static String figure(Double number) {
    return number == null ? "" : BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  private static String sizes(List<Double> sizesIn) {
    return String.join(" ", sizesIn.stream().map(EndListCommand::figure).toList());
  }
}
