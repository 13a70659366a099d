package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.fleet.ShowFleet;
import hosewright.fleet.FleetStatus;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.function.Supplier;

/** Shows how an agency's hose stands. */
final class FleetStatusCommand extends ShellCommand {
  private final ShowFleet show;

  FleetStatusCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "fleet status",
                Group.BUDGET,
                "Shows an agency's hose: counts, ages, overdue tests, odd threads",
                "fleet status")
            .with(OptionSpec.value("date", "DAY", "the day to count on").withDefaultSaid("today")));
    show = new ShowFleet(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    FleetStatus status = show.show(in.value("date"));
    return Answer.of(status, screen -> FleetStatusText.of(status, screen));
  }
}
