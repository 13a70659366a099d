package hosewright.line.plan;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.reading.CatalogueReader;
import hosewright.csv.CsvText;
import hosewright.job.Job;
import hosewright.job.JobForm;
import hosewright.job.question.JobField;
import hosewright.line.model.LinePlan;
import hosewright.thread.LocalThreads;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;

/** The invented dealer's catalogue as it lies in the repository, and plans made from it. */
public final class DemoCatalogue {
  /** A day on which the demo prices are in force. */
  public static final LocalDate DATE = LocalDate.of(2026, 11, 2);

  private static final Catalogue CATALOGUE = load();

  private DemoCatalogue() {}

  public static Catalogue get() {
    return CATALOGUE;
  }

  /**
   * The plan at list prices.
   *
   * @param answers field words and answers in turn
   */
  public static LinePlan plan(String... answers) {
    return plan(job(answers));
  }

  /** The plan at list prices. */
  public static LinePlan plan(Job job) {
    return new Planner(
            CATALOGUE, CATALOGUE.listPricesOn(DATE), DATE, CurrencyUnit.USD, LocalThreads.none())
        .plan(job);
  }

  public static Job job(String... answers) {
    Map<JobField, String> form = new TreeMap<>();
    for (int i = 0; i < answers.length; i += 2) {
      form.put(JobField.of(answers[i]).orElseThrow(), answers[i + 1]);
    }
    return JobForm.read(form);
  }

  private static Catalogue load() {
    Map<String, Reader> files = new LinkedHashMap<>();
    try {
      for (String file : CatalogueReader.FILES) {
        files.put(file, Files.newBufferedReader(Path.of("catalogue", file)));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return CatalogueReader.readTables(CsvText.all(files));
  }
}
