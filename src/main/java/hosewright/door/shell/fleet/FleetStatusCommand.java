package hosewright.door.shell.fleet;

import hosewright.desk.Books;
import hosewright.desk.fleet.ShowFleet;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import hosewright.fleet.budget.FleetStatus;
import java.util.function.Supplier;

/** Shows how an agency's hose stands. */
public final class FleetStatusCommand extends ShellCommand {
  private final ShowFleet show;

  public FleetStatusCommand(Supplier<Books> books) {
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
