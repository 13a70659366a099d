package hosewright.fuzz;

import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Ends work that hangs on one input, however many inputs there are. */
final class Watchdog {
  private static final Duration LONGEST_FOR_ONE = Duration.ofMinutes(2);
  private volatile long fedAtNanos = System.nanoTime();
  private volatile int fed;

  /** What is watched. */
  interface Work {
    void with(Watchdog watchdog) throws Exception;
  }

  private Watchdog() {}

  /** Runs the work to its end, or fails once it has not fed the watchdog for two minutes. */
  static void watch(Work work) throws Exception {
    Watchdog watchdog = new Watchdog();
    Thread[] worker = new Thread[1];
    ExecutorService one =
        Executors.newSingleThreadExecutor(
            task -> {
              worker[0] = new Thread(task, "watched");
              worker[0].setDaemon(true);
              return worker[0];
            });
    try {
      Future<?> done =
          one.submit(
              () -> {
                work.with(watchdog);
                return null;
              });
      watchdog.guard(done, worker[0]);
    } finally {
      one.shutdownNow();
    }
  }

  /** Said after every input. */
  void feed() {
    fed++;
    fedAtNanos = System.nanoTime();
  }

  private void guard(Future<?> done, Thread worker) throws Exception {
    while (true) {
      try {
        done.get(1, TimeUnit.SECONDS);
        return;
      } catch (TimeoutException e) {
        if (System.nanoTime() - fedAtNanos > LONGEST_FOR_ONE.toNanos()) {
          AssertionError hangs = new AssertionError("input %d hangs".formatted(fed));
          hangs.setStackTrace(worker.getStackTrace());
          throw hangs;
        }
      } catch (ExecutionException e) {
        if (e.getCause() instanceof Error fault) {
          throw fault;
        }
        throw (Exception) e.getCause();
      }
    }
  }
}
