package hosewright.door.shell.end;

import hosewright.csv.PlainNumber;
import hosewright.desk.end.ListEnds;
import hosewright.desk.end.ListEnds.EndRow;
import hosewright.desk.end.ListEnds.FamilyRow;
import hosewright.desk.end.ListEnds.Listed;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.thread.Families;
import hosewright.thread.Family;
import java.util.List;
import java.util.Optional;

/** Lists thread and coupling families with the sizes they are made in. */
public final class EndListCommand extends ShellCommand {
  private final ListEnds list = new ListEnds();

  public EndListCommand() {
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

  @Override
  protected Answer answer(Invocation in) {
    Optional<String> family = in.argument(0);
    Listed listed = list.list(family);
    return Answer.of(
        listed, screen -> family.isEmpty() ? families(listed, screen) : ends(listed, screen));
  }

  private static String families(Listed listed, Screen screen) {
    Table table = Table.of("family", "name", "kind", "sizes, in");
    for (FamilyRow row : listed.families()) {
      table.row(row.family(), row.name(), row.kind(), sizes(row.sizesIn()));
    }
    return table.on(screen) + "\nSizes are nominal, never measured. 'end list NH' shows more.";
  }

  private static String ends(Listed listed, Screen screen) {
    FamilyRow family = listed.families().get(0);
    Table table =
        Table.of("end", "male measures, in", "threads per inch", "standard").numbers(1, 2);
    for (EndRow row : listed.ends()) {
      table.row(
          row.end(), figure(row.majorDiameterIn()), figure(row.threadsPerInch()), row.standard());
    }
    return family.name() + ", " + family.kind() + "\n" + table.on(screen);
  }

  private static String figure(Double number) {
    return number == null ? "" : PlainNumber.of(number);
  }

  private static String sizes(List<Double> sizesIn) {
    return String.join(" ", sizesIn.stream().map(PlainNumber::of).toList());
  }
}
