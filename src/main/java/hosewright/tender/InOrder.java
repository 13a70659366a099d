package hosewright.tender;

import java.util.ArrayDeque;
import java.util.Iterator;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;

/** Works on many things at once and hands over the results in the order the things came. */
public final class InOrder {
  /** Enough that one slow piece of work does not leave the other threads idle. */
  private static final int WAITING_FOR_EACH_THREAD = 32;

  private InOrder() {}

  /**
   * Works through what {@code source} gives, never holding more than a few pieces a thread.
   *
   * @param work run on {@code threads} threads at once; what it throws is thrown here
   * @param sink run on the calling thread
   */
  public static <A, B> void work(
      Iterator<A> source, int threads, Function<A, B> work, Consumer<B> sink) {
    ExecutorService workers =
        Executors.newFixedThreadPool(
            threads,
            task -> {
              Thread thread = new Thread(task, "tender");
              thread.setDaemon(true);
              return thread;
            });
    try {
      Queue<Future<B>> waiting = new ArrayDeque<>();
      while (source.hasNext() || !waiting.isEmpty()) {
        while (source.hasNext() && waiting.size() < threads * WAITING_FOR_EACH_THREAD) {
          A piece = source.next();
          waiting.add(workers.submit(() -> work.apply(piece)));
        }
        sink.accept(result(waiting.remove()));
      }
    } finally {
      workers.shutdownNow();
    }
  }

  private static <B> B result(Future<B> future) {
    try {
      return future.get();
    } catch (ExecutionException e) {
      throw e.getCause() instanceof RuntimeException known
          ? known
          : new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
  }
}
