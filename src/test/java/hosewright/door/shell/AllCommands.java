package hosewright.door.shell;

import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.command.Workspace;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.Notices;
import java.lang.reflect.Constructor;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.springframework.context.annotation.Import;
import org.springframework.shell.core.command.Command;

/** Every command of the trade, made without Spring, over books on a day of the demo catalogue. */
public final class AllCommands {
  private AllCommands() {}

  public static List<Command> of(CommandTrial trial) {
    return of(trial, DemoBooks.DAY);
  }

  static List<Command> of(CommandTrial trial, Clock clock) {
    List<Command> commands = new ArrayList<>();
    for (Class<?> type : Commands.class.getAnnotation(Import.class).value()) {
      if (ShellCommand.class.isAssignableFrom(type)) {
        commands.add(made(type, trial, clock));
      }
    }
    return commands;
  }

  private static Command made(Class<?> type, CommandTrial trial, Clock clock) {
    Constructor<?> constructor = type.getDeclaredConstructors()[0];
    Object[] given = new Object[constructor.getParameterCount()];
    for (int i = 0; i < given.length; i++) {
      given[i] = part(constructor.getParameterTypes()[i], trial, clock);
    }
    constructor.setAccessible(true);
    try {
      return (Command) constructor.newInstance(given);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(type.getName(), e);
    }
  }

  private static Object part(Class<?> type, CommandTrial trial, Clock clock) {
    if (type == Supplier.class) {
      return DemoBooks.at(trial, clock);
    }
    if (type == Workspace.class) {
      return trial.workspace();
    }
    if (type == Notices.class) {
      return trial.notices();
    }
    throw new IllegalStateException("a command wants a " + type.getName());
  }
}
