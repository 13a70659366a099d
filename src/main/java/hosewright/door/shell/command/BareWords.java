package hosewright.door.shell.command;

import java.util.List;

/** Reads words without options as the options they can only mean. */
public interface BareWords {

  /**
   * The same as options with their values.
   *
   * @param words that were typed before any option; one at least
   * @throws hosewright.problem.BadInputException naming each word that could mean several things
   */
  List<String> asOptions(List<String> words);
}
