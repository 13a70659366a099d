package hosewright.report;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CatalogueReader;
import hosewright.line.JobField;
import hosewright.line.JobForm;
import hosewright.line.LinePlan;
import hosewright.line.Planner;
import hosewright.quote.Customer;
import hosewright.quote.CustomerReader;
import hosewright.quote.DealerTerms;
import hosewright.quote.Quote;
import hosewright.quote.QuoteMaker;
import hosewright.quote.Terms;
import hosewright.quote.TermsReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Quotes planned and priced from the demo catalogue as it lies in the repository. */
final class PlannedQuotes {
  private static final LocalDate DATE = LocalDate.of(2026, 11, 2);

  private static final List<String> JOBS =
      List.of(
          "COUNTER; title=Hydrant to hand nozzle; from=2.5 NH male hydrant; to=1.5 NH nozzle;"
              + " length=400 ft; flow=150 gpm; need=50 psi; source-pressure=150 psi;"
              + " section=50 ft; size=1.75 in; friction-coefficient=15.5",
          "DUNMERE-CON; title=Pump to tank, uphill; from=2.5 NH male pump; to=2.5 NH male tank;"
              + " length=900 ft; rise=35 ft; flow=200 gpm; need=5 psi; size=2.5 in; use=water;"
              + " temperature=48 F",
          "CALLOWAY-MILL; title=Wash-down line; from=1.5 NPT male pipe; to=1.5 NPSH nozzle;"
              + " length=180 ft; flow=60 gpm; need=60 psi; source-pressure=110 psi; use=water;"
              + " accessories=wrench",
          "HARLOW-FD; title=Twin supply lines; from=5 Storz hydrant; to=5 Storz;"
              + " length=950 ft; rise=-12 ft; flow=1400 gpm; need=20 psi; static=85 psi;"
              + " residual=60 psi; at=1600 gpm; lines=2",
          "SKERRY-FARM; title=Metered line; from=2.5 NH male hydrant; to=1.5 NH nozzle;"
              + " length=300 ft; flow=200 gpm; need=30 psi; source-pressure=140 psi; use=water;"
              + " accessories=meter, backflow, valve");

  private final Catalogue catalogue;
  private final Map<String, Customer> customers = new LinkedHashMap<>();
  private final DealerTerms terms;

  private PlannedQuotes() {
    catalogue = CatalogueReader.read(files(CatalogueReader.FILES));
    terms = TermsReader.read(files(TermsReader.FILES), Optional.of(CurrencyUnit.USD));
    var read = CustomerReader.read(files(CustomerReader.FILES), catalogue);
    read.customers().forEach(c -> customers.put(c.id(), read.get(c.id(), DATE)));
  }

  /** One quote of each kind of job. */
  static List<Quote> all() {
    PlannedQuotes desk = new PlannedQuotes();
    List<Quote> quotes = new ArrayList<>();
    for (String job : JOBS) {
      quotes.add(desk.quote(String.format("Q-1%05d", quotes.size() + 1), job));
    }
    return quotes;
  }

  private Quote quote(String number, String text) {
    String[] parts = text.split(";");
    Map<JobField, String> form = new EnumMap<>(JobField.class);
    for (int i = 1; i < parts.length; i++) {
      String[] answer = parts[i].split("=");
      form.put(JobField.of(answer[0].strip()).orElseThrow(), answer[1]);
    }
    Customer customer = customers.get(parts[0]);
    LinePlan plan =
        new Planner(catalogue, new Terms(catalogue, customer, DATE), DATE, CurrencyUnit.USD)
            .plan(JobForm.read(form));
    return new QuoteMaker(catalogue, terms)
        .make(
            number,
            customer,
            DATE,
            form.get(JobField.TITLE),
            text,
            plan,
            Instant.parse("2026-11-02T09:30:00Z"));
  }

  private static Map<String, Reader> files(List<String> names) {
    Map<String, Reader> readers = new LinkedHashMap<>();
    try {
      for (String name : names) {
        readers.put(name, Files.newBufferedReader(Path.of("catalogue", name)));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return readers;
  }
}
