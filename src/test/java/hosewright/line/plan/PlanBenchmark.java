package hosewright.line.plan;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.LargeCatalogue;
import hosewright.catalogue.reading.CatalogueReader;
import hosewright.csv.CsvText;
import hosewright.job.Job;
import hosewright.line.model.LinePlan;
import hosewright.thread.LocalThreads;
import java.io.IOException;
import java.io.Reader;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.joda.money.CurrencyUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long a plan with every size open takes, as a catalogue grows. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
@Fork(1)
public class PlanBenchmark {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 2);

  @Param({"250", "1000", "2500", "5000"})
  public int items;

  private Catalogue catalogue;
  private Job job;

  /** Makes the catalogue and the job. */
  @Setup
  public void draw() throws IOException {
    Path folder = Files.createTempDirectory("plan-benchmark");
    LargeCatalogue.write(folder, items, 1960);
    Map<String, Reader> files = new LinkedHashMap<>();
    for (String file : CatalogueReader.FILES) {
      files.put(file, Files.newBufferedReader(folder.resolve(file)));
    }
    catalogue = CatalogueReader.readTables(CsvText.all(files));
    job =
        DemoCatalogue.job(
            "from", "2.5 NH male hydrant",
            "to", "1.5 NH female nozzle",
            "length", "400 ft",
            "flow", "95 gpm",
            "need", "50 psi",
            "source-pressure", "120 psi");
  }

  /** Gives the plan's cost, a planner made anew as for each command. */
  @Benchmark
  public long plan() {
    LinePlan plan =
        new Planner(
                catalogue, catalogue.listPricesOn(DAY), DAY, CurrencyUnit.USD, LocalThreads.none())
            .plan(job);
    return plan.total().getAmountMinorLong();
  }

  /**
   * Prints the median of the processor time that plans take once warm, for a machine that others
   * use too.
   */
  public static void main(String[] args) throws IOException {
    for (int count : new int[] {250, 1000, 2500, 5000}) {
      PlanBenchmark benchmark = new PlanBenchmark();
      benchmark.items = count;
      benchmark.draw();
      int plans = 400_000 / count;
      long[] nanos = new long[plans];
      for (int i = 0; i < plans; i++) {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        benchmark.plan();
        nanos[i] = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start;
      }
      long[] warm = Arrays.copyOfRange(nanos, plans / 2, plans);
      Arrays.sort(warm);
      System.out.printf(
          Locale.ROOT, "%d items: %.1f ms%n", count, warm[warm.length / 2] / 1_000_000.0);
    }
  }
}
