package hosewright.disk;

import hosewright.problem.FullDisk;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;

/** What is the matter with a folder whose files the system would not change, in a user's words. */
public final class DiskTrouble {
  private DiskTrouble() {}

  /** A sentence of what is the matter, such as {@code its disk has no room left}. */
  public static String words(IOException refused) {
    if (FullDisk.isSaid(refused.getMessage())) {
      return "its disk has no room left";
    }
    return isReadOnly(refused)
        ? "it may not be written to, or its disk was turned read-only"
        : "its files cannot be replaced: " + refused.getMessage();
  }

  private static boolean isReadOnly(IOException refused) {
    return refused instanceof AccessDeniedException
        || refused.getCause() instanceof ReadOnlyFileSystemException
        || String.valueOf(refused.getMessage()).toLowerCase(Locale.ROOT).contains("read-only");
  }
}
