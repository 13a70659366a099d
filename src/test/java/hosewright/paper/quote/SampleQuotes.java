package hosewright.paper.quote;

import hosewright.hydraulics.law.DarcyWeisbach;
import hosewright.hydraulics.law.HazenWilliams;
import hosewright.line.model.Bill;
import hosewright.line.model.Check;
import hosewright.line.model.CheckId;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Hydraulics.CrossCheck;
import hosewright.line.model.Hydraulics.Station;
import hosewright.line.model.Joint;
import hosewright.line.model.Layout;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Node;
import hosewright.line.model.Owner;
import hosewright.line.model.Part;
import hosewright.line.model.Role;
import hosewright.line.model.Unpriced;
import hosewright.quote.Amendments;
import hosewright.quote.Basis;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import hosewright.quote.QuoteLine.Break;
import hosewright.quote.Totals;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.Dealer;
import hosewright.thread.End;
import hosewright.thread.Gender;
import hosewright.thread.Verdict.Outcome;
import hosewright.thread.Verdict.Seal;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Quotes made by hand, with invented buyers, items and prices, for tests of papers. */
public final class SampleQuotes {
  static final Dealer QUILLBACK =
      new Dealer(
          "Quillback Hose & Coupling",
          List.of("14 Cooper's Wharf", "Port Harlow"),
          "555-0142",
          "quotes@quillback.example",
          "Hose, couplings and adapters, made up and tested here.");

  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final End NH_25_MALE = new End(2.5, "NH", Gender.MALE, false);
  private static final End NH_25_FEMALE = new End(2.5, "NH", Gender.FEMALE, true);
  private static final End NH_15_MALE = new End(1.5, "NH", Gender.MALE, false);
  private static final End NH_15_FEMALE = new End(1.5, "NH", Gender.FEMALE, true);
  private static final End STORZ_5 = new End(5, "Storz", Gender.SEXLESS, false);
  private static final Map<String, Double> SECTION_FT =
      Map.of("DJ175-50-NH15", 50.0, "LDH5-100-ST", 100.0);
  private static final String NH_SOURCE = "NFPA 1963 (1993), reprinted thread tables";

  private static final LinePlan.Searched SEARCHED = new LinePlan.Searched(12, 7, 3, 41);

  private SampleQuotes() {}

  /** Hydrant to hand nozzle: nine 50 ft sections of 1.75 in hose behind a reducing adapter. */
  public static Quote hydrantLine() {
    double flowGpm = 95;
    double frictionPsi = 15.5 * 0.95 * 0.95 * 4.5;
    double adapterPsi = 0.42;
    double risePsi = 10 * 0.434;
    double sourcePsi = 125;
    double required = 50 + frictionPsi + adapterPsi + risePsi;
    List<Station> profile = new ArrayList<>();
    profile.add(new Station("Hydrant outlet", 0, 0, sourcePsi, 130));
    double start = sourcePsi - adapterPsi;
    profile.add(new Station("Adapter outlet", 0, 0, start, 130));
    for (int section = 1; section <= 9; section++) {
      double part = section / 9.0;
      profile.add(
          new Station(
              section == 9 ? "Nozzle" : "End of section " + section,
              50 * section,
              10 * part,
              start - (frictionPsi + risePsi) * part,
              130 - risePsi * part));
    }
    Hydraulics hydraulics =
        new Hydraulics(
            new Hydraulics.Pressures(
                required, Optional.of(sourcePsi), sourcePsi - frictionPsi - adapterPsi - risePsi),
            new Hydraulics.Losses(frictionPsi, risePsi, adapterPsi, 0),
            new Hydraulics.Friction(
                "coefficient law with C = 15.5 from the hose item",
                Optional.of(15.5),
                List.of(
                    new CrossCheck(
                        "hazen-williams",
                        Optional.of(135.0),
                        Optional.empty(),
                        Optional.empty(),
                        1.75,
                        new HazenWilliams(135, 1.75).lossPsi(flowGpm, 450)),
                    new CrossCheck(
                        "darcy-weisbach",
                        Optional.empty(),
                        Optional.of(0.00006),
                        Optional.of(48.0),
                        1.75,
                        new DarcyWeisbach(0.00006, 1.75, 48.0).lossPsi(flowGpm, 450))),
                List.of()),
            new Hydraulics.Forces(12.67, Optional.of(33.9), 63.3, 784.0),
            new Hydraulics.Filled(56.2, 108.0, 577.0, 0.59),
            profile,
            List.of());
    List<QuoteLine> lines =
        List.of(
            line(
                1,
                "DJ175-50-NH15",
                "Hose 1.75 in double jacket, 50 ft coupled 1.5 NH",
                10,
                118.5,
                "1:139.50 6:128.00 10:118.50 25:109.25",
                230),
            line(
                2,
                "AD-25NHF-15NHM",
                "Adapter 2.5 NH female swivel x 1.5 NH male, brass",
                1,
                41.75,
                "1:41.75 5:38.20",
                2.1),
            line(
                3,
                "NZ-15NH-FOG",
                "Fog nozzle 1.5 NH, 95 gpm at 50 psi, with shut-off",
                1,
                312.4,
                "1:312.40",
                3.6),
            line(4, "GK-15", "Gasket 1.5 in, for swivel ends", 2, 0.85, "1:0.85 25:0.60", 0.1),
            line(5, "GK-25", "Gasket 2.5 in, for swivel ends", 1, 1.15, "1:1.15 25:0.90", 0.1),
            line(
                6,
                "WR-SPAN",
                "Spanner wrench for 1.5 to 2.5 in couplings",
                2,
                17.3,
                "1:17.30 12:15.80",
                2.8));
    LinePlan plan =
        new LinePlan(
            new LinePlan.Asked(
                "A 1.75 in line of nine 50 ft sections (450 ft for a 400 ft run with 5 % slack)"
                    + " from a 2.5 NH male hydrant outlet to a 1.5 NH hand nozzle, carrying 95 gpm"
                    + " with 57 psi arriving where 50 psi is needed.",
                flowGpm, 50, List.of()),
            new LinePlan.Answer(
                true,
                Optional.empty(),
                List.of(),
                List.of(
                    "Open and close the nozzle slowly: sudden closure can raise the pressure far"
                        + " above the hose's rating.",
                    "The nozzle pushes back with about 34 lbf; keep two people on it until the line"
                        + " is steady.")),
            layout(
                new Leg.Hose(1.75, 1.5, "DJ175", 1.75, 420, 450),
                1,
                hydraulics,
                List.of(
                    part(Role.SOURCE, "", "Hydrant outlet", null, NH_25_MALE, 1),
                    part(
                        Role.ADAPTER,
                        "AD-25NHF-15NHM",
                        "Adapter 2.5 NH female swivel x 1.5 NH male",
                        NH_25_FEMALE,
                        NH_15_MALE,
                        1),
                    part(
                        Role.HOSE,
                        "DJ175-50-NH15",
                        "Hose 1.75 in, 50 ft",
                        NH_15_FEMALE,
                        NH_15_MALE,
                        9),
                    part(Role.APPLIANCE, "NZ-15NH-FOG", "Fog nozzle", NH_15_FEMALE, null, 1)),
                List.of(
                    nhJoint(NH_25_MALE, NH_25_FEMALE, "Hydrant outlet", "Adapter", 1),
                    nhJoint(NH_15_MALE, NH_15_FEMALE, "Adapter", "Hose 1.75 in, 50 ft", 1),
                    nhJoint(
                        NH_15_MALE, NH_15_FEMALE, "Hose 1.75 in, 50 ft", "Hose 1.75 in, 50 ft", 8),
                    nhJoint(NH_15_MALE, NH_15_FEMALE, "Hose 1.75 in, 50 ft", "Fog nozzle", 1))),
            hydraulics,
            List.of(
                check(
                    CheckId.DELIVERED_PRESSURE,
                    Check.Outcome.PASS,
                    57.3,
                    50,
                    "psi",
                    "Enough arrives at the nozzle."),
                check(
                    CheckId.HOSE_WORKING_PRESSURE,
                    Check.Outcome.PASS,
                    130,
                    270,
                    "psi",
                    "Highest pressure the hose sees with the nozzle shut."),
                check(
                    CheckId.VELOCITY,
                    Check.Outcome.PASS,
                    12.67,
                    20,
                    "ft/s",
                    "Below the usual limit for mains laid long."),
                check(
                    CheckId.SUDDEN_CLOSURE,
                    Check.Outcome.WARN,
                    784,
                    300,
                    "psi",
                    "Upper bound with the fastest wave; close slowly."),
                check(
                    CheckId.NOZZLE_REACTION,
                    Check.Outcome.PASS,
                    33.9,
                    75,
                    "lbf",
                    "One or two people can hold it.")),
            new Bill(
                planItems(lines),
                List.of(),
                subtotal(lines),
                DAY,
                new Bill.Gaskets(11, 0, 3),
                List.of(),
                List.of()),
            new LinePlan.Weighed(List.of(), SEARCHED));
    return quote(
        "Q-000001",
        1,
        "Hydrant line for Fairlead Boatyard",
        plan,
        lines,
        "24.50",
        true,
        "0.0625",
        customer());
  }

  /**
   * Two sexless supply lines for an exempt buyer: long names, a part to be sourced, a shortfall.
   */
  static Quote supplyLine() {
    double perLineHundreds = 5;
    double frictionPsi = 0.08 * perLineHundreds * perLineHundreds * 10;
    double risePsi = 20 * 0.434;
    double sourcePsi = 40;
    double required = 20 + frictionPsi + risePsi + 10;
    List<Station> profile = new ArrayList<>();
    profile.add(new Station("Hydrant, steamer outlet with lugged adapter", 0, 0, sourcePsi, 60));
    for (int section = 1; section <= 10; section++) {
      double part = section / 10.0;
      profile.add(
          new Station(
              "End of section " + section,
              100 * section,
              20 * part,
              sourcePsi - (frictionPsi + risePsi) * part,
              60 - risePsi * part));
    }
    Station last = profile.get(10);
    profile.add(new Station("Relay valve", 1000, 20, last.flowingPsi() - 10, last.closedPsi()));
    Hydraulics hydraulics =
        new Hydraulics(
            new Hydraulics.Pressures(
                required, Optional.of(sourcePsi), sourcePsi - frictionPsi - risePsi - 10),
            new Hydraulics.Losses(frictionPsi, risePsi, 0, 10),
            new Hydraulics.Friction(
                "coefficient law with C = 0.08 by size", Optional.of(0.08), List.of(), List.of()),
            new Hydraulics.Forces(8.17, Optional.empty(), 40.9, 505.0),
            new Hydraulics.Filled(1020, 2200, 19220, 2.04),
            profile,
            List.of());
    List<QuoteLine> lines =
        List.of(
            line(
                1,
                "LDH5-100-ST",
                "Supply hose 5 in, 100 ft coupled 5 Storz, rubber covered, yellow",
                20,
                905,
                "1:1010.00 10:948.40 20:905.00",
                2000),
            line(
                2,
                "WR-STORZ",
                "Wrench set for 4 and 5 in sexless couplings",
                4,
                28.33,
                "1:28.33",
                8.4),
            line(3, "GK-ST5", "Face gasket 5 in sexless coupling", 4, 3.99, "1:3.99 10:3.49", 0.4));
    LinePlan plan =
        new LinePlan(
            new LinePlan.Asked(
                "Two 5 in sexless supply lines of ten 100 ft sections each, carrying 1,000 gpm in"
                    + " all to a relay valve 20 ft above the hydrant.",
                1000,
                20,
                List.of()),
            new LinePlan.Answer(
                false,
                Optional.of(
                    "1.3 psi arrives at the relay valve where 20 psi is needed: 18.7 psi short"),
                List.of(
                    "A source of 58.7 psi at the hydrant would do.",
                    "Three lines in place of two would do with 47.6 psi at the source."),
                List.of("Charge the lines slowly and let the air out first.")),
            layout(
                new Leg.Hose(5, 5, "LDH5", 5, 997.5, 1000),
                2,
                hydraulics,
                List.of(
                    part(
                        Role.SOURCE,
                        "",
                        "Hydrant, steamer outlet with lugged adapter",
                        null,
                        STORZ_5,
                        1),
                    part(
                        Role.HOSE, "LDH5-100-ST", "Supply hose 5 in, 100 ft", STORZ_5, STORZ_5, 10),
                    part(Role.APPLIANCE, "", "Relay valve", STORZ_5, null, 1)),
                List.of(
                    storzJoint(
                        "Hydrant, steamer outlet with lugged adapter",
                        "Supply hose 5 in, 100 ft",
                        1),
                    storzJoint("Supply hose 5 in, 100 ft", "Supply hose 5 in, 100 ft", 9),
                    storzJoint("Supply hose 5 in, 100 ft", "Relay valve", 1))),
            hydraulics,
            List.of(
                check(
                    CheckId.DELIVERED_PRESSURE,
                    Check.Outcome.FAIL,
                    1.32,
                    20,
                    "psi",
                    "Too little arrives at the relay valve."),
                check(
                    CheckId.HOSE_WORKING_PRESSURE,
                    Check.Outcome.PASS,
                    60,
                    200,
                    "psi",
                    "Highest pressure the hose sees.")),
            new Bill(
                planItems(lines),
                List.of(
                    Unpriced.part(
                        0, "Adapter 4.5 NH female swivel x 5 Storz: not in the catalogue")),
                subtotal(lines),
                DAY,
                new Bill.Gaskets(40, 0, 4),
                List.of(),
                List.of()),
            new LinePlan.Weighed(List.of(), SEARCHED));
    Customer exempt =
        new Customer(
            "HARLOW-FD",
            "Port Harlow Volunteer Fire Company",
            "2 Bell Street, Port Harlow",
            new Customer.Pricing("agency", new BigDecimal("0.08"), Map.of()),
            new Customer.Taxation(
                "none",
                BigDecimal.ZERO,
                Optional.of(new Customer.Exemption("PH-EX-0077", LocalDate.of(2025, 1, 15)))),
            "FOB destination");
    return quote(
        "Q-000002",
        3,
        "Twin supply lines, Bell Street to the mill",
        plan,
        lines,
        "310.00",
        false,
        "0",
        exempt);
  }

  /** Text that a spreadsheet would run, tax that lands on half a cent, and many lines. */
  static Quote awkward() {
    Quote base = hydrantLine();
    List<QuoteLine> lines = new ArrayList<>();
    lines.add(
        line(
            1,
            "=1+1",
            "=HYPERLINK(\"http://example.invalid\",\"free hose\")",
            1,
            1000.08,
            "1:1000.08",
            0));
    lines.add(
        new QuoteLine(
            2,
            new QuoteLine.Goods(
                "+A1",
                "-2+3 \u00bd in \u00d8 <b>&amp;</b> \u2014 \"quoted\"",
                "each",
                "EA",
                9,
                false),
            3,
            new QuoteLine.Price(
                usd(33.33),
                usd(33.33),
                usd(99.99),
                List.of(new Break(1, usd(33.33))),
                Optional.empty()),
            Optional.of("@SUM(A1:A9)")));
    for (int position = 3; position <= 90; position++) {
      lines.add(
          line(
              position,
              "IT-" + position,
              "Item "
                  + position
                  + (position % 7 == 0
                      ? " with a description that runs on for more than one line of its cell, as"
                          + " makers' do"
                      : ""),
              position,
              0.5 * position,
              "1:" + position + " " + position + ":" + 0.5 * position,
              position));
    }
    lines.add(
        new QuoteLine(
            91,
            new QuoteLine.Goods("TAB", "\tstarts with a tab", "each", "EA", 1, false),
            1,
            new QuoteLine.Price(usd(1), usd(1), usd(1), List.of(), Optional.empty()),
            Optional.empty()));
    // One line taxed at 1000.08 x 0.0625 = 62.505, which half-up makes 62.51.
    List<QuoteLine> taxedOnce =
        lines.stream().map(l -> l.position() == 1 ? l : untaxed(l)).toList();
    Customer injected =
        new Customer(
            "X",
            "-Dash & Sons",
            "@home",
            new Customer.Pricing("retail", BigDecimal.ZERO, Map.of()),
            new Customer.Taxation(
                "Port Harlow sales tax", new BigDecimal("0.0625"), Optional.empty()),
            "=FOB");
    return quote(
        "Q-000003",
        2,
        "=cmd|' /C calc'!A0",
        base.plan(),
        taxedOnce,
        "0.00",
        false,
        "0.0625",
        injected);
  }

  /** A quote of 1 to 120 lines, with words of any length in them, and as many terms as may be. */
  static Quote random(Random random) {
    List<QuoteLine> lines = new ArrayList<>();
    int count = 1 + random.nextInt(120);
    for (int position = 1; position <= count; position++) {
      int cents = 1 + random.nextInt(random.nextInt(50) == 0 ? 90_000_000 : 90_000);
      double each = cents / 100.0;
      lines.add(
          line(
              position,
              "IT-" + words(random, 1).toUpperCase(Locale.ROOT) + "-" + random.nextInt(100_000),
              words(random, 1 + random.nextInt(random.nextInt(8) == 0 ? 40 : 8)),
              1 + random.nextInt(random.nextInt(20) == 0 ? 20_000 : 30),
              each,
              "1:" + BigDecimal.valueOf(cents, 2).toPlainString(),
              1));
    }
    Quote base =
        quote(
            "Q-000004",
            1,
            words(random, 5),
            hydrantLine().plan(),
            lines,
            "78.00",
            true,
            "0.0625",
            customer());
    List<String> terms = new ArrayList<>();
    for (int i = random.nextInt(14); i > 0; i--) {
      terms.add(words(random, 4 + random.nextInt(40)) + ".");
    }
    return new Quote(
        base.name(),
        random.nextBoolean() ? Quote.Status.DRAFT : Quote.Status.ISSUED,
        base.customer(),
        base.validity(),
        base.basis(),
        new Quote.Offer(lines, List.of(), Amendments.NONE.withTerms(terms)),
        base.totals());
  }

  private static String words(Random random, int count) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      StringBuilder word = new StringBuilder();
      for (int letter = 1 + random.nextInt(12); letter > 0; letter--) {
        word.append((char) ('a' + random.nextInt(26)));
      }
      words.add(word.toString());
    }
    return String.join(" ", words);
  }

  /** The plan as it would stand if the first joint jammed. */
  public static LinePlan withFirstJointJammed(LinePlan p) {
    Joint j = p.joints().get(0);
    List<Joint> joints = new ArrayList<>(p.joints());
    Joint.Fit jammed =
        new Joint.Fit(
            Outcome.JAMS,
            Seal.NONE,
            false,
            "Same pitch, other taper: it starts and jams.",
            j.fit().source());
    joints.set(0, new Joint(j.leg(), j.upstream(), j.downstream(), j.count(), jammed));
    Layout layout = p.layout();
    return new LinePlan(
        p.asked(),
        p.answer(),
        new Layout(layout.nodes(), layout.legs(), joints, layout.devices()),
        p.hydraulics(),
        p.checks(),
        p.bill(),
        p.weighed());
  }

  /** The plan as it would stand if its hose were called something else. */
  public static LinePlan withHoseDescribed(LinePlan p, String description) {
    Layout layout = p.layout();
    Leg leg = layout.legs().get(0);
    List<Part> parts =
        leg.parts().stream()
            .map(
                part ->
                    part.isHose()
                        ? new Part(
                            part.role(),
                            part.owner(),
                            new Part.Goods(part.item(), description),
                            part.ends(),
                            part.count(),
                            part.section(),
                            part.flow())
                        : part)
            .toList();
    Leg renamed =
        new Leg(leg.name(), leg.begins(), leg.ends(), leg.lines(), leg.hose(), leg.water(), parts);
    return new LinePlan(
        p.asked(),
        p.answer(),
        new Layout(layout.nodes(), List.of(renamed), layout.joints(), layout.devices()),
        p.hydraulics(),
        p.checks(),
        p.bill(),
        p.weighed());
  }

  static List<Quote> all() {
    return List.of(hydrantLine(), supplyLine(), awkward());
  }

  private static Quote quote(
      String number,
      int revision,
      String title,
      LinePlan plan,
      List<QuoteLine> lines,
      String freight,
      boolean freightTaxed,
      String taxRate,
      Customer customer) {
    Money subtotal = subtotal(lines);
    Money freightCharged = Money.of(CurrencyUnit.USD, new BigDecimal(freight));
    Money taxable =
        lines.stream()
            .filter(line -> line.goods().taxable())
            .map(line -> line.price().extended())
            .reduce(Money.zero(CurrencyUnit.USD), Money::plus)
            .plus(freightTaxed ? freightCharged : Money.zero(CurrencyUnit.USD));
    Money tax = taxable.multipliedBy(new BigDecimal(taxRate), RoundingMode.HALF_UP);
    boolean exempt = customer.taxation().exemption().isPresent();
    return new Quote(
        new Quote.Name(number, revision),
        Quote.Status.DRAFT,
        customer,
        new Quote.Validity(DAY, DAY.plusDays(30), 14, Instant.parse("2026-03-02T15:04:05Z")),
        new Basis(title, "from: 2.5 NH male\n", plan, Optional.empty()),
        new Quote.Offer(lines, List.of(), Amendments.NONE),
        new Totals(
            subtotal,
            freightCharged,
            tax,
            subtotal.plus(freightCharged).plus(tax),
            new Totals.Charging(
                "by weight table, ground, FOB Port Harlow",
                freightTaxed,
                new BigDecimal(taxRate),
                exempt
                    ? "exempt, certificate PH-EX-0077 dated 2025-01-15"
                    : "Port Harlow sales tax 6.25 %")));
  }

  private static Customer customer() {
    return new Customer(
        "FAIRLEAD",
        "Fairlead Boatyard",
        "Slip 9, North Quay, Port Harlow",
        new Customer.Pricing("trade", new BigDecimal("0.05"), Map.of()),
        new Customer.Taxation("Port Harlow sales tax", new BigDecimal("0.0625"), Optional.empty()),
        "FOB origin, prepaid and added");
  }

  private static QuoteLine line(
      int position,
      String item,
      String description,
      int quantity,
      double unit,
      String breaks,
      double weightLb) {
    List<Break> steps = new ArrayList<>();
    for (String step : breaks.split(" ")) {
      String[] parts = step.split(":");
      steps.add(new Break(Integer.parseInt(parts[0]), usd(Double.parseDouble(parts[1]))));
    }
    Money unitPrice = usd(unit);
    return new QuoteLine(
        position,
        new QuoteLine.Goods(item, description, "each", "EA", weightLb, true),
        quantity,
        new QuoteLine.Price(
            steps.get(0).unitPrice(),
            unitPrice,
            unitPrice.multipliedBy(quantity),
            steps,
            Optional.empty()),
        Optional.empty());
  }

  private static QuoteLine untaxed(QuoteLine l) {
    return new QuoteLine(
        l.position(),
        new QuoteLine.Goods(
            l.goods().item(),
            l.goods().description(),
            l.goods().unit(),
            l.goods().unitCode(),
            l.goods().weightLb(),
            false),
        l.quantity(),
        l.price(),
        l.note());
  }

  private static List<Bill.Item> planItems(List<QuoteLine> lines) {
    return lines.stream()
        .map(
            l ->
                new Bill.Item(
                    l.goods().item(),
                    l.goods().description(),
                    l.quantity(),
                    0,
                    l.goods().unit(),
                    Optional.of(l.price().unitPrice()),
                    l.goods().weightLb()))
        .toList();
  }

  private static Money subtotal(List<QuoteLine> lines) {
    return lines.stream()
        .map(line -> line.price().extended())
        .reduce(Money.zero(CurrencyUnit.USD), Money::plus);
  }

  /** A line between the first and the last of some parts. */
  private static Layout layout(
      Leg.Hose hose, int lines, Hydraulics water, List<Part> run, List<Joint> joints) {
    int last = run.size() - 1;
    Leg leg =
        new Leg(
            "line",
            "source",
            "appliance",
            lines,
            Optional.of(hose),
            new Leg.Water(
                0,
                water.profile().get(0).flowingPsi(),
                water.deliveredPsi(),
                new Leg.Friction(
                    water.frictionLossPsi(), water.frictionBasis(), water.frictionCoefficient()),
                water.velocityFtPerS(),
                water.waterGal()),
            run.subList(1, last));
    return new Layout(
        List.of(new Node("source", run.get(0), 1), new Node("appliance", run.get(last), 1)),
        List.of(leg),
        joints,
        List.of());
  }

  private static Part part(
      Role role, String item, String description, End upstream, End downstream, int count) {
    boolean buyers = role == Role.SOURCE || role == Role.APPLIANCE && item.isEmpty();
    return new Part(
        role,
        buyers ? Owner.BUYER : Owner.DEALER,
        new Part.Goods(Optional.of(item).filter(number -> !number.isEmpty()), description),
        new Part.Ends(Optional.ofNullable(upstream), Optional.ofNullable(downstream)),
        count,
        role == Role.HOSE
            ? Optional.of(new Part.Section(SECTION_FT.get(item), Optional.empty()))
            : Optional.empty(),
        new Part.Flow(0, 0, 0));
  }

  private static Joint nhJoint(End upstream, End downstream, String from, String to, int count) {
    return new Joint(
        "line",
        new Joint.Side(upstream, from, ""),
        new Joint.Side(downstream, to, ""),
        count,
        new Joint.Fit(
            Outcome.MATES,
            Seal.GASKET,
            true,
            "Same NH thread, male into female swivel, tight on its gasket.",
            NH_SOURCE));
  }

  private static Joint storzJoint(String from, String to, int count) {
    return new Joint(
        "line",
        new Joint.Side(STORZ_5, from, ""),
        new Joint.Side(STORZ_5, to, ""),
        count,
        new Joint.Fit(
            Outcome.MATES,
            Seal.LUG,
            true,
            "Both halves alike with the same lug spacing; face gaskets meet.",
            "common practice, no source"));
  }

  private static Check check(
      CheckId id, Check.Outcome outcome, double value, double limit, String unit, String note) {
    return new Check(
        id, outcome, new Check.Figure(value, limit, unit), note, "common practice, no source");
  }

  private static Money usd(double amount) {
    return Money.of(CurrencyUnit.USD, BigDecimal.valueOf(amount));
  }
}
