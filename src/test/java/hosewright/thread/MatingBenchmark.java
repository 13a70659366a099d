package hosewright.thread;

import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long a million verdicts take, over random pairs of every end there is. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5)
@Measurement(iterations = 10)
@Fork(2)
public class MatingBenchmark {
  private static final int CALLS = 1_000_000;

  private final End[] first = new End[CALLS];
  private final End[] second = new End[CALLS];

  /** Draws the pairs; copies, as they come out of a parser, not the listed ends themselves. */
  @Setup
  public void draw() {
    List<End> ends = Families.ends();
    Random random = new Random(1963);
    for (int i = 0; i < CALLS; i++) {
      first[i] = copy(ends.get(random.nextInt(ends.size())));
      second[i] = copy(ends.get(random.nextInt(ends.size())));
    }
  }

  private static End copy(End end) {
    return new End(end.sizeIn(), end.family(), end.gender(), end.swivel());
  }

  /** Gives how many mate, so that no call can be left out. */
  @Benchmark
  public int million_verdicts() {
    int mating = 0;
    for (int i = 0; i < CALLS; i++) {
      if (Mating.of(first[i], second[i]).mates()) {
        mating++;
      }
    }
    return mating;
  }
}
