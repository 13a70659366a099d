package hosewright.desk;

import hosewright.catalogue.Catalogue;
import hosewright.store.catalogue.CatalogueStore;
import java.lang.ref.SoftReference;
import java.util.Optional;

/**
 * The catalogue as it was last read whole, for as long as the books hold the same: the same load,
 * the same rows, the same stock. A session asks for it with every command.
 *
 * <p>It is let go of where memory runs short.
 */
public final class LastRead {
  private SoftReference<Read> last = new SoftReference<>(null);

  private record Read(CatalogueStore.Mark mark, Catalogue catalogue) {}

  /**
   * The whole catalogue but for costs.
   *
   * @param store to be read steadily, so that mark and rows belong together
   */
  synchronized Catalogue of(CatalogueStore store) {
    Optional<CatalogueStore.Mark> mark = store.mark();
    Read kept = last.get();
    if (kept != null && mark.filter(kept.mark()::equals).isPresent()) {
      return kept.catalogue();
    }
    Catalogue catalogue = store.loadWithoutCosts();
    last = new SoftReference<>(mark.map(stands -> new Read(stands, catalogue)).orElse(null));
    return catalogue;
  }
}
