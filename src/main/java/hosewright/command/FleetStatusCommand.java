package hosewright.command;

import hosewright.desk.Books;
import hosewright.fleet.FleetStatus;
import hosewright.fleet.FleetTally;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import hosewright.store.FleetStore;
import java.util.function.Supplier;

/** Shows how an agency's hose stands. */
final class FleetStatusCommand extends ShellCommand {
  private final Supplier<Books> books;

  FleetStatusCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "fleet status",
                Group.BUDGET,
                "Shows an agency's hose: counts, ages, overdue tests, odd threads",
                "fleet status")
            .with(OptionSpec.value("date", "DAY", "the day to count on").withDefaultSaid("today")));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    FleetStatus status;
    try (Books open = books.get()) {
      FleetStore fleet = FleetOptions.loaded(open);
      FleetTally tally = new FleetTally(fleet.limits(), FleetOptions.day(in, "date", open.today()));
      fleet.each(tally::add);
      status = tally.status(fleet.outlets());
    }
    return Answer.of(status, screen -> FleetStatusText.of(status, screen));
  }
}
