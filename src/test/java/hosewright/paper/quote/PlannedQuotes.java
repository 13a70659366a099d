package hosewright.paper.quote;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.reading.CatalogueReader;
import hosewright.csv.CsvText;
import hosewright.intake.JobFile;
import hosewright.intake.JobText;
import hosewright.job.Job;
import hosewright.job.JobForm;
import hosewright.line.model.LinePlan;
import hosewright.line.plan.Planner;
import hosewright.quote.Amendments;
import hosewright.quote.Basis;
import hosewright.quote.Discount;
import hosewright.quote.Group;
import hosewright.quote.PriceList;
import hosewright.quote.Quote;
import hosewright.quote.QuoteMaker;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.CustomerReader;
import hosewright.quote.terms.CustomerTerms;
import hosewright.quote.terms.DealerTerms;
import hosewright.quote.terms.MarginFloors;
import hosewright.quote.terms.TermsReader;
import hosewright.thread.LocalThreads;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;

/** Quotes planned and priced from the demo catalogue as it lies in the repository. */
public final class PlannedQuotes {
  private static final LocalDate DATE = LocalDate.of(2026, 11, 2);
  private static final Instant MADE_AT = Instant.parse("2026-11-02T09:30:00Z");

  /** No source stated; the flow split over two lines; losses stated by makers in the line. */
  private static final List<String> HARDER_JOBS =
      List.of(
          """
          title: Pump to tank, uphill
          from: 2.5 NH male pump
          to: 2.5 NH male tank
          length: 900 ft
          rise: 35 ft
          flow: 200 gpm
          need: 5 psi
          size: 2.5 in
          use: water
          temperature: 48 F
          customer: DUNMERE-CON
          """,
          """
          title: Twin supply lines
          from: 5 Storz hydrant
          to: 5 Storz
          length: 950 ft
          rise: -12 ft
          flow: 1400 gpm
          need: 20 psi
          static: 85 psi
          residual: 60 psi
          at: 1600 gpm
          lines: 2
          customer: HARLOW-FD
          """,
          """
          title: Metered line
          from: 2.5 NH male hydrant
          to: 1.5 NH nozzle
          length: 300 ft
          flow: 200 gpm
          need: 30 psi
          source-pressure: 140 psi
          use: water
          accessories: meter, backflow, valve
          customer: SKERRY-FARM
          """,
          """
          title: Two monitors behind a wye, downhill
          from: 4 Storz hydrant
          to: 2.5 NH female monitor
          length: 400 ft
          rise: -30 ft
          attack-lines: 2
          attack-length: 100 ft
          attack-size: 2.5 in
          size: 4 in
          flow: 250 gpm
          need: 60 psi
          static: 90 psi
          residual: 70 psi
          at: 1200 gpm
          customer: HARLOW-FD
          """,
          """
          title: Two lines from two outlets
          from: 2.5 NH male pump
          to: 4 Storz monitor
          length: 300 ft
          outlets: 2
          size: 2.5 in
          flow: 500 gpm
          need: 80 psi
          accessories: valve at 100 ft
          customer: COUNTER
          """,
          """
          title: Over a summit, by whatever pump it takes
          from: 2.5 NH male pump
          to: 2.5 NH male tank
          route: 0 ft at 0 ft; 120 ft at 500 ft; -200 ft at 1000 ft
          flow: 100 gpm
          need: 5 psi
          size: 2.5 in
          use: water
          customer: COUNTER
          """);

  private static final Map<Asked, LinePlan> PLANS = new ConcurrentHashMap<>();

  private final Catalogue catalogue;
  private final Map<String, Customer> customers = new LinkedHashMap<>();
  private final DealerTerms terms;

  private PlannedQuotes() {
    catalogue = CatalogueReader.readTables(CsvText.all(files(CatalogueReader.FILES)));
    terms =
        TermsReader.readTables(
            CsvText.all(files(TermsReader.FILES)), Optional.of(CurrencyUnit.USD));
    var read =
        CustomerReader.readTables(
            CsvText.all(files(CustomerReader.FILES)), catalogue, MarginFloors.NONE);
    read.customers().forEach(c -> customers.put(c.id(), read.get(c.id(), DATE)));
  }

  /** A quote of every demo job, and of harder ones. */
  public static List<Quote> all() {
    List<String> jobs = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("quotes"))) {
      for (Path file : files.filter(path -> path.toString().endsWith(".yaml")).sorted().toList()) {
        jobs.add(JobText.write(JobFile.read(file).answers()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    jobs.addAll(HARDER_JOBS);
    PlannedQuotes desk = new PlannedQuotes();
    List<Quote> quotes = new ArrayList<>();
    for (String job : jobs) {
      quotes.add(desk.quote(String.format("Q-1%05d", quotes.size() + 1), job));
    }
    return quotes;
  }

  /** The first demo job: one line from a hydrant to a nozzle. */
  static Quote plainLine() {
    String job = JobText.write(JobFile.read(Path.of("quotes/hydrant-to-nozzle.yaml")).answers());
    return new PlannedQuotes().quote("Q-100000", job);
  }

  /** Two jobs and parts alone in one quote; the last job stands beside the total. */
  static Quote fitOut() {
    PlannedQuotes desk = new PlannedQuotes();
    Customer customer = desk.customers.get("HARLOW-FD");
    List<Group> groups = new ArrayList<>();
    for (String text : HARDER_JOBS.subList(0, 2)) {
      Job job = JobForm.read(JobText.parse(text));
      boolean last = groups.size() == 1;
      groups.add(
          new Group(
              groups.size() + 1,
              new Group.Heading(job.title(), last ? 1 : 2, false),
              text,
              desk.plan(job, customer)));
    }
    Job beside = JobForm.read(JobText.parse(HARDER_JOBS.get(0)));
    groups.add(
        new Group(
            groups.size() + 1,
            new Group.Heading("A line to spare", 1, true),
            HARDER_JOBS.get(0),
            desk.plan(beside, customer)));
    return new QuoteMaker(desk.catalogue, desk.terms)
        .make(
            new QuoteMaker.Draft(
                new Quote.Name("Q-300001", 1),
                customer,
                DATE,
                Basis.of("Fit-out of an engine", Optional.empty(), groups),
                Amendments.NONE,
                MADE_AT),
            new PriceList(desk.catalogue, customer, DATE));
  }

  /** A quote of which every second line has a discount, each of another percentage. */
  static Quote discounted() {
    PlannedQuotes desk = new PlannedQuotes();
    Quote plain = desk.quote("Q-200001", HARDER_JOBS.get(0));
    Amendments amendments = Amendments.NONE;
    for (int i = 0; i < plain.lines().size(); i += 2) {
      // 3.7 %, 14.7 % and so on leave cents to round on almost any price.
      BigDecimal fraction = BigDecimal.valueOf(37L + 55 * i, 3);
      amendments =
          amendments.withDiscount(
              plain.lines().get(i).key(), new Discount(fraction, "first order"));
    }
    return desk.quote("Q-200001", HARDER_JOBS.get(0), amendments);
  }

  private Quote quote(String number, String text) {
    return quote(number, text, Amendments.NONE);
  }

  private Quote quote(String number, String text, Amendments amendments) {
    Job job = JobForm.read(JobText.parse(text));
    Customer customer = customers.get(job.customer().orElse("COUNTER"));
    LinePlan plan = plan(job, customer);
    return new QuoteMaker(catalogue, terms)
        .make(
            new QuoteMaker.Draft(
                new Quote.Name(number, 1),
                customer,
                DATE,
                new Basis(job.title(), text, plan),
                amendments,
                MADE_AT),
            new PriceList(catalogue, customer, DATE));
  }

  private LinePlan plan(Job job, Customer customer) {
    return PLANS.computeIfAbsent(new Asked(job, customer), asked -> planned(job, customer));
  }

  /** Quotes of one job differ in what is made of its plan. */
  private record Asked(Job job, Customer customer) {}

  private LinePlan planned(Job job, Customer customer) {
    return new Planner(
            catalogue,
            new CustomerTerms(catalogue, customer, DATE),
            DATE,
            CurrencyUnit.USD,
            LocalThreads.none())
        .plan(job);
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
