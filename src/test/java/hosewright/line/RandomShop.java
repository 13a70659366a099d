package hosewright.line;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.thread.End;
import hosewright.thread.Gender;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntConsumer;
import java.util.stream.Stream;

/** Small random catalogues, and jobs that make their parts matter. */
final class RandomShop {
  /** Ends that meet, almost meet, jam or need an adapter. */
  private static final List<String> ENDS =
      List.of(
          "1.5 NH male",
          "1.5 NH female",
          "1.5 NH female swivel",
          "2.5 NH male",
          "2.5 NH female swivel",
          "1.5 NPSH male",
          "1.5 NPSH female swivel",
          "1.5 NPT male",
          "1.5 NPT female",
          "2.5 Storz",
          "2.5 QST male",
          "2.5 QST female swivel");

  private static final List<String> PAIRS =
      List.of(
          "1.5 NH female swivel x 1.5 NH male",
          "1.5 NH female x 1.5 NH male",
          "2.5 NH female swivel x 2.5 NH male",
          "1.5 NPSH female swivel x 1.5 NPSH male",
          "2.5 Storz x 2.5 Storz",
          "1.5 NPT female x 1.5 NPT male",
          "1.5 NH female swivel x 1.5 NPSH male");

  private static final List<Double> LENGTHS_FT = List.of(25.0, 40.0, 50.0, 75.0, 100.0);

  private final Random random;
  private final SmallShop shop = new SmallShop();

  RandomShop(Random random) {
    this.random = random;
    times(1 + random.nextInt(2), i -> hoseSeries("H" + i));
    if (random.nextInt(3) == 0) {
      bulk();
    }
    times(3 + random.nextInt(4), i -> adapter("A" + i));
    times(random.nextInt(6), i -> gasket("G" + i));
    times(random.nextInt(3), i -> priced(shop.part("S" + i, ItemKind.SEALANT), 1, 900));
    times(2, i -> priced(shop.part("W" + i, ItemKind.WRENCH), 500, 2_000));
    fitting(shop.part("V0", ItemKind.VALVE, "1.5 NH female swivel", "1.5 NH male"));
    fitting(shop.part("V1", ItemKind.VALVE, "1.5 NPSH female swivel", "1.5 NPSH male"));
    String wide = pick(List.of("1.5 NH", "2.5 NH"));
    fitting(shop.part("Y", ItemKind.WYE, wide + " female swivel", "1.5 NH male", "1.5 NH male"));
    fitting(
        shop.part(
            "SI",
            ItemKind.SIAMESE,
            "1.5 NH female swivel",
            "1.5 NH female swivel",
            wide + " male"));
  }

  private static void times(int count, IntConsumer action) {
    for (int i = 0; i < count; i++) {
      action.accept(i);
    }
  }

  SmallShop shop() {
    return shop;
  }

  private void hoseSeries(String name) {
    String[] ends = pick(PAIRS).split(" x ");
    double sizeIn = pick(List.of(1.5, 2.5));
    boolean fitted = random.nextBoolean();
    times(
        1 + random.nextInt(3),
        i -> {
          double lengthFt = pick(LENGTHS_FT);
          SmallShop.Part part =
              shop.part(name + "-" + i, ItemKind.HOSE, ends).hose(sizeIn, lengthFt, name);
          rate(part, 100);
          if (fitted) {
            part.gasketsFitted();
          }
          part.weighs(lengthFt / 2);
          if (random.nextInt(12) == 0) {
            part.discontinued(random.nextInt(4));
          }
          if (random.nextInt(4) == 0) {
            part.serviceTest(120 + random.nextInt(200));
          }
          if (random.nextInt(3) > 0) {
            part.markedTo("NFPA 1961");
          }
          priced(part, (int) (lengthFt * 100), 8_000);
        });
  }

  /** Bulk hose, its couplings and the work; work has no quantity breaks here. */
  private void bulk() {
    double sizeIn = pick(List.of(1.5, 2.5));
    SmallShop.Part hose = shop.part("B", ItemKind.BULK_HOSE).hose(sizeIn, 0, "B");
    rate(hose, 100);
    priced(hose.markedTo("NFPA 1961"), 80, 150);
    String[] ends = pick(PAIRS).split(" x ");
    times(
        2,
        i ->
            priced(shop.part("C" + i, ItemKind.COUPLING, ends[i]).hose(sizeIn, 0, ""), 300, 1_500));
    times(
        1 + random.nextInt(2),
        i -> priced(shop.part("X" + i, ItemKind.ATTACHMENT).hose(sizeIn, 0, ""), 50, 300));
    shop.part("L", ItemKind.COUPLING_LABOUR).at(100 + random.nextInt(400));
    shop.part("T", ItemKind.PRESSURE_TEST).at(100 + random.nextInt(400));
  }

  private void adapter(String number) {
    SmallShop.Part part = shop.part(number, ItemKind.ADAPTER, meeting(), pick(ENDS));
    if (random.nextInt(10) == 0) {
      part.discontinued(1 + random.nextInt(2));
    }
    fitting(part);
  }

  private void fitting(SmallShop.Part part) {
    rate(part, 100);
    if (random.nextBoolean()) {
      part.gasketsFitted();
    }
    switch (random.nextInt(3)) {
      case 0 -> part.lossCoefficient(random.nextInt(20));
      case 1 -> part.loss(random.nextInt(12));
      default -> {}
    }
    priced(part, 500, 4_000);
  }

  private void gasket(String number) {
    SmallShop.Part part = shop.part(number, ItemKind.GASKET, pick(ENDS));
    if (random.nextInt(8) == 0) {
      part.discontinued(random.nextInt(6));
    }
    priced(part, 20, 300);
  }

  private void rate(SmallShop.Part part, int leastPsi) {
    if (random.nextInt(3) > 0) {
      part.working(leastPsi + random.nextInt(300));
    }
    if (random.nextInt(6) == 0) {
      part.derated(80, leastPsi + 100.0).derated(150, leastPsi);
    }
    if (random.nextInt(8) == 0) {
      part.vacuum();
    }
  }

  /** A price and up to two quantity breaks, some so deep that buying more costs less. */
  private void priced(SmallShop.Part part, int leastCents, int spread) {
    int cents = leastCents + random.nextInt(spread);
    if (random.nextInt(8) == 0 && !part.isDiscontinued()) {
      part.stocked(random.nextInt(5), random.nextInt(30));
    }
    part.at(cents);
    int quantity = 1;
    int breaks = random.nextInt(3);
    for (int i = 0; i < breaks; i++) {
      quantity += 1 + random.nextInt(5);
      cents = Math.max(1, cents * (40 + random.nextInt(58)) / 100);
      shop.price(part.number(), quantity, cents);
    }
  }

  Job job() {
    return DemoCatalogue.job(answers().toArray(String[]::new));
  }

  /** A job with one or two valves between sections of its hose. */
  Job stationJob() {
    Map<String, String> answers = byField(answers());
    int lengthFt = 30 + random.nextInt(70);
    String valve = pick(List.of("valve", "V0", "V1"));
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

  /** A job with two attack lines behind a wye. */
  Job wyeJob() {
    Map<String, String> answers = byField(answers());
    answers.keySet().removeAll(List.of("lines", "owned"));
    answers.put("length", (20 + random.nextInt(60)) + " ft");
    answers.put("attack-lines", "2");
    answers.put("attack-length", (20 + random.nextInt(60)) + " ft");
    answers.put("flow", (5 + random.nextInt(90)) + " gpm");
    answers.computeIfPresent("rise", (field, old) -> (random.nextInt(40) - 20) + " ft");
    if (random.nextInt(4) == 0) {
      answers.put("attack-size", pick(List.of("1.5 in", "1.5 in, 2.5 in")));
    }
    if (random.nextInt(6) == 0) {
      answers.put("accessories", pick(List.of("V0 at 10 ft", "V1 at appliance", "V0")));
    }
    return job(answers);
  }

  /** A job with a line from each of two outlets, joined by a siamese. */
  Job outletsJob() {
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
    answer(answers, "flow", (10 + random.nextInt(random.nextBoolean() ? 60 : 240)) + " gpm");
    answer(answers, "need", (5 + random.nextInt(random.nextBoolean() ? 20 : 80)) + " psi");
    if (random.nextInt(3) == 0) {
      answer(answers, "rise", (random.nextInt(2 * lengthFt) - lengthFt) + " ft");
    }
    supply(answers);
    if (random.nextInt(5) == 0) {
      answer(answers, "use", "fire");
    }
    if (random.nextInt(4) == 0) {
      answer(answers, "temperature", pick(List.of("60 F", "100 F", "149 F")));
    }
    answer(answers, "lines", random.nextInt(10) == 0 ? "2" : "1");
    if (random.nextInt(3) == 0) {
      answer(
          answers,
          "accessories",
          pick(
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
      answer(answers, "size", pick(List.of("1.5 in", "1.5 in, 2.5 in", "2.5 in or 3 in")));
    }
    if (random.nextInt(3) == 0) {
      answer(answers, "owned", owned());
    }
  }

  /** Sections like some of the shop's, a few of them. */
  private String owned() {
    Item hose = pick(shop.items().stream().filter(item -> item.kind() == ItemKind.HOSE).toList());
    End inlet = HoseLines.inlet(hose.ends());
    String couplings = inlet.sizeIn() + " " + (inlet.carriesGasket() ? inlet.family() : "NH");
    String tested = random.nextBoolean() ? " tested " + (150 + random.nextInt(200)) + " psi" : "";
    String more = random.nextBoolean() ? ", 1 x 30 ft" : "";
    return (1 + random.nextInt(3))
        + " x "
        + pick(LENGTHS_FT)
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
    return meeting() + " " + carriers[random.nextInt(carriers.length)];
  }

  /** Mostly an end that meets something in the shop: else few jobs could be served. */
  private String meeting() {
    if (random.nextInt(6) == 0) {
      return pick(ENDS);
    }
    List<Item> parts =
        shop.items().stream()
            .filter(item -> item.kind() == ItemKind.HOSE || item.kind() == ItemKind.ADAPTER)
            .toList();
    End half = pick(parts).ends().get(random.nextInt(2)).opposite();
    boolean swivels = half.gender() == Gender.FEMALE && half.carriesGasket();
    return half + (swivels && random.nextBoolean() ? " swivel" : "");
  }

  private <T> T pick(List<T> from) {
    return from.get(random.nextInt(from.size()));
  }

  private static void answer(List<String> answers, String field, String text) {
    answers.add(field);
    answers.add(text);
  }
}
