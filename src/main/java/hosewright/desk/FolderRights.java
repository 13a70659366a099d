package hosewright.desk;

import hosewright.disk.OwnerOnly;
import hosewright.disk.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;

/**
 * Tells whoever keeps books in a folder that others may look into it: once, for it may be meant.
 */
final class FolderRights {
  /** There where it was told. */
  static final String TOLD = "open-to-others.txt";

  private FolderRights() {}

  /**
   * Tells it unless it was told before.
   *
   * @param folder a data folder that is there
   */
  static void tellOnce(Path folder, Consumer<String> remarks) {
    try {
      Path told = folder.resolve(TOLD);
      if (OwnerOnly.isOpenToOthers(folder) && !Files.exists(told)) {
        String sentence =
            "Other users of this machine may look into the data folder: chmod -R go-rwx '%s' closes"
                    .formatted(folder)
                + " it. This is said once.";
        WholeFile.put(told, sentence + "\n", false);
        remarks.accept(sentence);
      }
    } catch (IOException e) {
      // Whoever may not even ask who may look has other trouble, and is told of it elsewhere.
      return;
    }
  }
}
