package hosewright.desk;

import hosewright.problem.BadInputException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** A place in the file system, as a user names it. */
public final class NamedPath {
  private NamedPath() {}

  /**
   * The place.
   *
   * @param field the option or argument that names it
   * @param allowed what it should have been, for example "the name of a folder"
   * @throws BadInputException when no file or folder can have that name
   */
  public static Path of(String field, String text, String allowed) {
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new BadInputException(field, text, allowed);
    }
  }
}
