package hosewright.tender;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/**
 * What was found lately, each thing found once even when several threads ask for it together.
 *
 * @param <K> what is asked for
 * @param <V> what was found
 */
final class Recent<K, V> {
  private final Map<K, FutureTask<V>> found;

  /**
   * @param most how many findings are kept; the one not asked for longest goes first
   */
  Recent(int most) {
    this.found = bounded(most);
  }

  /** A map that forgets what was not asked for longest; for one thread. */
  static <K, V> Map<K, V> bounded(int most) {
    return new LinkedHashMap<>(16, 0.75f, true) {
      private static final long serialVersionUID = 1L;

      @Override
      protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
        return size() > most;
      }
    };
  }

  /** What is known about the key, else what the finder gives; what it throws is thrown. */
  V get(K key, Supplier<V> finder) {
    FutureTask<V> task;
    boolean mine;
    synchronized (found) {
      FutureTask<V> known = found.get(key);
      mine = known == null;
      task = mine ? new FutureTask<>(finder::get) : known;
      if (mine) {
        found.put(key, task);
      }
    }
    if (mine) {
      task.run();
    }
    try {
      return task.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException known) {
        throw known;
      }
      if (e.getCause() instanceof Error worse) {
        throw worse;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
  }
}
