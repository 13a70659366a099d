package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.intake.JobFile;
import hosewright.job.JobForm;
import hosewright.line.model.LinePlan;
import hosewright.line.search.RandomShop;
import hosewright.paper.json.Json;
import hosewright.thread.LocalThreads;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.codec.digest.DigestUtils;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** One job on one catalogue gives the same bytes, in whatever process. */
class SamePlansTest {
  private static final int SHOPS = 150;

  /** Sets and maps of the library are salted anew in each process: their order would show. */
  @Test
  void two_processes_write_the_same_plans_for_every_demo_job_and_150_random_shops()
      throws Exception {
    List<String> here = digests();
    assertThat(digestsOfAnotherProcess()).isEqualTo(here);
    assertThat(here).hasSizeGreaterThan(SHOPS);
  }

  private static List<String> digestsOfAnotherProcess() throws Exception {
    String classPath =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                // It lives too briefly for the second compiler to be worth its work.
                "-XX:TieredStopAtLevel=1",
                "-cp",
                classPath,
                SamePlansTest.class.getName())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    List<String> lines =
        new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
            .lines()
            .toList();
    assertThat(process.waitFor()).isZero();
    return lines;
  }

  /** Prints the digests, for the other process. */
  public static void main(String[] args) throws IOException {
    digests().forEach(System.out::println);
  }

  private static List<String> digests() throws IOException {
    List<String> digests = new ArrayList<>();
    Planner planner =
        new Planner(
            DemoCatalogue.get(),
            DemoCatalogue.get().listPricesOn(DemoCatalogue.DATE),
            DemoCatalogue.DATE,
            CurrencyUnit.USD,
            LocalThreads.none());
    try (Stream<Path> jobs = Files.list(Path.of("quotes"))) {
      for (Path file : jobs.filter(path -> path.toString().endsWith(".yaml")).sorted().toList()) {
        LinePlan plan = planner.plan(JobForm.read(JobFile.read(file).answers()));
        digests.add(file.getFileName() + " " + digest(plan));
      }
    }
    for (int seed = 0; seed < SHOPS; seed++) {
      RandomShop random = new RandomShop(new Random(seed));
      LinePlan plan = random.shop().planner().plan(random.job());
      digests.add("shop " + seed + " " + digest(plan));
    }
    return digests;
  }

  private static String digest(LinePlan plan) {
    return DigestUtils.sha256Hex(Json.write(plan));
  }
}
