package hosewright;

import hosewright.door.shell.Commands;
import hosewright.door.shell.run.ShellApplication;

/** The program's door. */
public final class Hosewright {
  private Hosewright() {}

  public static void main(String[] args) {
    System.exit(ShellApplication.run(args, Commands.GREETING, Commands::of));
  }
}
