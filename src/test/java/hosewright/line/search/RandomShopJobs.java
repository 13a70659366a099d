package hosewright.line.search;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.job.Job;
import hosewright.job.layout.LayoutForm;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LayoutText;
import hosewright.job.layout.LegPoints;
import hosewright.job.layout.LegText;
import hosewright.job.layout.PartsBeside;
import hosewright.job.layout.PointText;
import hosewright.job.question.JobField;
import hosewright.line.hose.HoseLines;
import hosewright.line.plan.DemoCatalogue;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Jobs for a small random shop, of each shape that a line may have. */
final class RandomShopJobs {
  private final RandomShop shop;
  private final Random random;

  RandomShopJobs(RandomShop shop, Random random) {
    this.shop = shop;
    this.random = random;
  }

  Job plain() {
    return DemoCatalogue.job(answers().toArray(String[]::new));
  }

  /** A job with one or two valves between sections of its hose. */
  Job withStations() {
    Map<String, String> answers = byField(answers());
    int lengthFt = 30 + random.nextInt(70);
    String valve = shop.pick(List.of("valve", "V0", "V1"));
    String asked = valve + " at " + (1 + random.nextInt(lengthFt)) + " ft";
    switch (random.nextInt(4)) {
      case 0 -> asked += ", V0 at " + (1 + random.nextInt(lengthFt)) + " ft";
      case 1 -> asked += ", wrench";
      case 2 -> asked += ", " + asked;
      default -> {}
    }
    answers.put("length", lengthFt + " ft");
    answers.put("accessories", asked);
    answers.remove("rise");
    if (random.nextBoolean()) {
      answers.put("rise", (random.nextInt(2 * lengthFt) - lengthFt) + " ft");
    }
    return job(answers);
  }

  /** A job over ground that goes up and down, with one line, one behind a wye or a valve in it. */
  Job onRoute() {
    Map<String, String> answers = byField(answers());
    int lengthFt = 40 + random.nextInt(75);
    answers.keySet().removeAll(List.of("length", "rise"));
    answers.put("route", route(lengthFt));
    switch (random.nextInt(6)) {
      case 0 -> {
        answers.keySet().removeAll(List.of("lines", "owned", "accessories"));
        answers.put("attack-lines", "2");
        answers.put("attack-length", (15 + random.nextInt(lengthFt - 20)) + " ft");
      }
      case 1 -> answers.put("accessories", "valve at " + (1 + random.nextInt(lengthFt)) + " ft");
      default -> {}
    }
    return job(answers);
  }

  /** Steep enough for its turns to matter beside the pressures of a small shop. */
  private String route(int lengthFt) {
    StringBuilder places = new StringBuilder("0 ft at 0 ft");
    int alongFt = 0;
    int heightFt = 0;
    while (alongFt < lengthFt) {
      int onFt = Math.min(1 + random.nextInt(40), lengthFt - alongFt);
      alongFt += onFt;
      heightFt += random.nextInt(2 * onFt + 1) - onFt;
      places.append("; ").append(heightFt).append(" ft at ").append(alongFt).append(" ft");
    }
    return places.toString();
  }

  /** A job for which more of one adapter is wanted than any line takes. */
  Job withMany() {
    Map<String, String> answers = byField(answers());
    answers.put("accessories", (25 + random.nextInt(20)) + " x A" + random.nextInt(4));
    return job(answers);
  }

  /** A job with two attack lines behind a wye. */
  Job withWye() {
    Map<String, String> answers = byField(answers());
    answers.keySet().removeAll(List.of("lines", "owned"));
    answers.put("length", (20 + random.nextInt(60)) + " ft");
    answers.put("attack-lines", "2");
    answers.put("attack-length", (20 + random.nextInt(60)) + " ft");
    answers.put("flow", (5 + random.nextInt(60)) + " gpm");
    answers.computeIfPresent("rise", (field, old) -> (random.nextInt(40) - 20) + " ft");
    if (random.nextInt(4) == 0) {
      answers.put("attack-size", shop.pick(List.of("1.5 in", "1.5 in, 2.5 in")));
    }
    if (random.nextInt(6) == 0) {
      answers.put("accessories", shop.pick(List.of("V0 at 10 ft", "V1 at appliance", "V0")));
    }
    if (random.nextInt(2) == 0) {
      answers.put("allow", shop.pick(List.of("plain-wye", "plain-wye, hose-type, narrow-fitting")));
    }
    return job(answers);
  }

  /** Two unlike lines behind a third, each with its own length, height and need. */
  LayoutJob withLegs() {
    return LayoutForm.read(legs());
  }

  private LayoutText legs() {
    Map<JobField, String> whole = new TreeMap<>();
    Map<String, String> answers = byField(answers());
    for (String field :
        List.of("from", "temperature", "date", "stock-only", "spare-sections", "allow")) {
      Optional.ofNullable(answers.get(field))
          .ifPresent(answer -> whole.put(JobField.of(field).orElseThrow(), answer));
    }
    List<String> fed = new ArrayList<>();
    supply(fed);
    byField(fed).forEach((field, answer) -> whole.put(JobField.of(field).orElseThrow(), answer));
    return new LayoutText(
        whole,
        List.of(
            leg("first", Optional.empty(), Map.of()),
            leg("left", Optional.of("first"), appliance()),
            leg("right", Optional.of("first"), appliance())));
  }

  /** One or two unlike lines behind a pump of the buyer's, which a first one feeds. */
  LayoutJob withRelay() {
    LayoutText unlike = legs();
    List<LegText> legs = new ArrayList<>(unlike.legs());
    LegText first = legs.get(0);
    legs.set(
        0,
        new LegText(
            first.name(),
            first.behind(),
            "",
            first.answers(),
            new LegPoints(Optional.empty(), Optional.of("pump"), Map.of())));
    if (random.nextBoolean()) {
      legs.remove(2);
    }
    Map<String, String> pump = new TreeMap<>();
    pump.put("intake", shop.meeting());
    pump.put("discharges", shop.meeting() + ", 2 x " + shop.meeting());
    int churnPsi = 10 + random.nextInt(120);
    pump.put(
        "pump-curve", churnPsi + " psi at 0 gpm; " + random.nextInt(churnPsi) + " psi at 150 gpm");
    if (random.nextInt(3) > 0) {
      pump.put("relief", (40 + random.nextInt(120)) + " psi");
    }
    if (random.nextBoolean()) {
      pump.put("least-intake", random.nextInt(40) + " psi");
    }
    return LayoutForm.read(
        new LayoutText(
            unlike.answers(), legs, List.of(new PointText("pump", pump)), PartsBeside.NONE));
  }

  private LegText leg(String name, Optional<String> behind, Map<JobField, String> ends) {
    Map<JobField, String> answers = new TreeMap<>(ends);
    answers.put(JobField.LENGTH, (15 + random.nextInt(60)) + " ft");
    if (random.nextInt(3) == 0) {
      answers.put(JobField.RISE, (random.nextInt(30) - 15) + " ft");
    }
    if (random.nextInt(4) == 0) {
      answers.put(JobField.SIZE, shop.pick(List.of("1.5 in", "1.5 in, 2.5 in")));
    }
    return new LegText(name, behind, "", answers);
  }

  private Map<JobField, String> appliance() {
    return Map.of(
        JobField.TO, end("nozzle", "tank", "sprinkler"),
        JobField.FLOW, (5 + random.nextInt(60)) + " gpm",
        JobField.NEED, (5 + random.nextInt(40)) + " psi");
  }

  /** A job with a line from each of two outlets, joined by a siamese. */
  Job withOutlets() {
    Map<String, String> answers = byField(answers());
    answers.remove("lines");
    answers.put("outlets", "2");
    return job(answers);
  }

  private static Job job(Map<String, String> answers) {
    return DemoCatalogue.job(
        answers.entrySet().stream()
            .flatMap(answer -> Stream.of(answer.getKey(), answer.getValue()))
            .toArray(String[]::new));
  }

  private static Map<String, String> byField(List<String> answers) {
    Map<String, String> byField = new LinkedHashMap<>();
    for (int i = 0; i < answers.size(); i += 2) {
      byField.put(answers.get(i), answers.get(i + 1));
    }
    return byField;
  }

  private List<String> answers() {
    List<String> answers = new ArrayList<>();
    answer(answers, "from", end("hydrant", "pump", "pipe", "tank"));
    answer(answers, "to", end("nozzle", "monitor", "tank", "pipe", "sprinkler"));
    int lengthFt = 25 + random.nextInt(90);
    answer(answers, "length", lengthFt + " ft");
    answer(answers, "flow", (10 + random.nextInt(random.nextInt(3) > 0 ? 60 : 240)) + " gpm");
    answer(answers, "need", (5 + random.nextInt(random.nextBoolean() ? 20 : 80)) + " psi");
    if (random.nextInt(3) == 0) {
      answer(answers, "rise", (random.nextInt(2 * lengthFt) - lengthFt) + " ft");
    }
    supply(answers);
    if (random.nextInt(5) == 0) {
      answer(answers, "use", "fire");
    }
    if (random.nextInt(4) == 0) {
      answer(answers, "temperature", shop.pick(List.of("60 F", "100 F", "149 F")));
    }
    answer(answers, "lines", random.nextInt(10) == 0 ? "2" : "1");
    if (random.nextInt(3) == 0) {
      answer(
          answers,
          "accessories",
          shop.pick(
              List.of(
                  "wrench",
                  "wrench, wrench",
                  "valve",
                  "valve at appliance",
                  "V1",
                  "V0 at appliance",
                  "A0",
                  "H0-0",
                  "W1, W1, W1")));
    }
    if (random.nextInt(6) == 0) {
      answer(
          answers,
          "allow",
          shop.pick(
              List.of(
                  "narrow-fitting", "plain-wye", "hose-type, narrow-fitting", "reduced-device")));
    }
    if (random.nextInt(5) < 2) {
      terms(answers);
    }
    return answers;
  }

  /** What a buyer may set besides the line. */
  private void terms(List<String> answers) {
    if (random.nextInt(6) == 0) {
      answer(answers, "stock-only", "yes");
    }
    if (random.nextInt(6) == 0) {
      answer(answers, "date", SmallShop.DATE.toString());
      answer(answers, "deliver-by", SmallShop.DATE.plusDays(random.nextInt(30)).toString());
    }
    if (random.nextInt(3) == 0) {
      answer(answers, "spare-sections", String.valueOf(1 + random.nextInt(3)));
    }
    if (random.nextInt(6) == 0) {
      answer(answers, "section-weight", (20 + random.nextInt(40)) + " lb");
    }
    if (random.nextInt(6) == 0) {
      answer(answers, "budget", (80 + random.nextInt(600)) + " USD");
    }
    if (random.nextInt(6) == 0) {
      answer(answers, "size", shop.pick(List.of("1.5 in", "1.5 in, 2.5 in", "2.5 in or 3 in")));
    }
    if (random.nextInt(3) == 0) {
      answer(answers, "owned", owned());
    }
  }

  /** Sections like some of the shop's, a few of them. */
  private String owned() {
    Item hose =
        shop.pick(
            shop.shop().items().stream().filter(item -> item.kind() == ItemKind.HOSE).toList());
    End inlet = HoseLines.inlet(hose.ends());
    String couplings = inlet.sizeIn() + " " + (inlet.carriesGasket() ? inlet.family() : "NH");
    String tested = random.nextBoolean() ? " tested " + (150 + random.nextInt(200)) + " psi" : "";
    String more = random.nextBoolean() ? ", 1 x 30 ft" : "";
    return (1 + random.nextInt(3))
        + " x "
        + shop.pick(RandomShop.LENGTHS_FT)
        + " ft "
        + hose.hose().orElseThrow().sizeIn()
        + " in "
        + couplings
        + tested
        + more;
  }

  private void supply(List<String> answers) {
    switch (random.nextInt(4)) {
      case 0 -> answer(answers, "source-pressure", (20 + random.nextInt(180)) + " psi");
      case 1 -> {
        answer(answers, "static", (50 + random.nextInt(100)) + " psi");
        answer(answers, "residual", (22 + random.nextInt(25)) + " psi");
        answer(answers, "at", (100 + random.nextInt(900)) + " gpm");
      }
      case 2 -> {
        int shutPsi = 120 + random.nextInt(100);
        answer(
            answers, "pump-curve", shutPsi + " psi at 0 gpm; 90 psi at 200 gpm; 20 psi at 500 gpm");
      }
      default -> {}
    }
  }

  private String end(String... carriers) {
    return shop.meeting() + " " + carriers[random.nextInt(carriers.length)];
  }

  private static void answer(List<String> answers, String field, String text) {
    answers.add(field);
    answers.add(text);
  }
}
