package hosewright;

import hosewright.command.Commands;
import hosewright.shell.ShellApplication;

/** The program's door. */
public final class Hosewright {
  private Hosewright() {}

  public static void main(String[] args) {
    System.exit(ShellApplication.run(args, Commands.class));
  }
}
