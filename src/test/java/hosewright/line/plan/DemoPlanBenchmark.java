package hosewright.line.plan;

import hosewright.hydraulics.Arrival;
import hosewright.hydraulics.Demand;
import hosewright.hydraulics.Fitting;
import hosewright.hydraulics.HoseLeg;
import hosewright.hydraulics.Hydrant;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.LineHydraulics;
import hosewright.hydraulics.Solution;
import hosewright.hydraulics.Supply;
import hosewright.hydraulics.law.CoefficientLaw;
import hosewright.intake.JobFile;
import hosewright.job.Job;
import hosewright.job.JobForm;
import hosewright.line.model.LinePlan;
import hosewright.thread.LocalThreads;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
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

/**
 * Plans solved in a second: both hydraulic questions on lines as they are planned, and whole plans
 * of the demo jobs on the demo catalogue.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 3, time = 5)
@Fork(1)
public class DemoPlanBenchmark {
  private static final int LINES = 1_000;

  private final List<List<LineElement>> lines = new ArrayList<>();
  private final List<Demand> demands = new ArrayList<>();
  private final List<Supply> supplies = new ArrayList<>();
  private final List<Job> jobs = new ArrayList<>();
  private Planner planner;
  private int next;

  /** Draws the lines and reads the demo jobs. */
  @Setup
  public void draw() {
    Random random = new Random(291);
    for (int i = 0; i < LINES; i++) {
      HoseLeg hose =
          new HoseLeg(
              "hose",
              new CoefficientLaw(0.08 + 15 * random.nextDouble()),
              50.0 * (1 + random.nextInt(20)),
              random.nextInt(40),
              2.5,
              1,
              1 + random.nextInt(20));
      lines.add(List.of(new Fitting("in", 0.32, 1.5), hose, new Fitting("out", 0.1, 2.5)));
      demands.add(new Demand.FlowAndPressure(50 + random.nextInt(400), 50));
      supplies.add(new Hydrant(80 + random.nextInt(60), 50, 500 + random.nextInt(1_000), 4));
    }
    try (Stream<Path> files = Files.list(Path.of("quotes"))) {
      files
          .filter(file -> file.toString().endsWith(".yaml"))
          .sorted()
          .forEach(file -> jobs.add(JobForm.read(JobFile.read(file).answers())));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    planner =
        new Planner(
            DemoCatalogue.get(),
            DemoCatalogue.get().listPricesOn(DemoCatalogue.DATE),
            DemoCatalogue.DATE,
            CurrencyUnit.USD,
            LocalThreads.none());
  }

  /** What pressure a flow needs. */
  @Benchmark
  public Solution pressure_needed_for_a_flow() {
    int i = next++ % LINES;
    return LineHydraulics.required(lines.get(i), 100 + i % 300, 50);
  }

  /** What flow a hydrant brings: a root is sought. */
  @Benchmark
  public Arrival flow_that_a_hydrant_brings() {
    int i = next++ % LINES;
    return LineHydraulics.arriving(lines.get(i), supplies.get(i), demands.get(i));
  }

  /** A whole plan: search, hydraulics, checks, price. One of the demo jobs after the other. */
  @Benchmark
  public LinePlan whole_plan_of_a_demo_job() {
    return planner.plan(jobs.get(next++ % jobs.size()));
  }
}
