package hosewright.store.database;

import hosewright.problem.TroubleException;
import hosewright.store.folder.DataFolder;
import java.nio.file.Path;

/** The store's file is there but is not, or no longer, a store. */
public final class DamagedStoreException extends TroubleException {
  private static final long serialVersionUID = 1;

  /**
   * @param advice what would help, after "restore a backup"
   */
  DamagedStoreException(Path folder, String advice) {
    super(
        "data folder",
        folder.toString(),
        "its file "
            + DataFolder.STORE
            + " is damaged or not a store of this program: 'data check' says what of it can be"
            + " read, or restore a backup"
            + advice,
        Kept.NOTHING);
  }
}
