package hosewright.job.layout;

import hosewright.job.Job;
import hosewright.job.JobForm;
import hosewright.job.question.JobField;
import hosewright.job.question.SourceKind;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Reads a layout, or names everything wrong with it and the leg it is wrong in. */
public final class LayoutForm {
  /** No layout of more legs is planned. */
  public static final int MOST_LEGS = 40;

  /** What a leg says for itself; all else is said once for the whole layout. */
  public static final List<JobField> OF_A_LEG =
      List.of(
          JobField.TO,
          JobField.LENGTH,
          JobField.RISE,
          JobField.ROUTE,
          JobField.FLOW,
          JobField.NEED,
          JobField.TIP,
          JobField.SIZE,
          JobField.COUPLING_SIZE,
          JobField.HOSE_THREAD,
          JobField.SECTION,
          JobField.LINES,
          JobField.FRICTION_COEFFICIENT,
          JobField.ACCESSORIES);

  /** What only the end of a way has. */
  private static final List<JobField> OF_AN_END =
      List.of(JobField.TO, JobField.FLOW, JobField.NEED, JobField.TIP);

  /** What cannot be said where legs are listed, since legs say it. */
  private static final List<JobField> SHORT_WORDS =
      List.of(
          JobField.OUTLETS,
          JobField.ATTACK_LINES,
          JobField.ATTACK_LENGTH,
          JobField.ATTACK_SIZE,
          JobField.OWNED,
          JobField.LIFT);

  private static final int MOST_COPIES = 6;
  private static final double LEAST_UNLIKE_FT = 1e-6;

  private static final String UNTIL_PLANNED = "2.5 NH female appliance";

  private final Map<JobField, String> shared;
  private List<PointText> points;
  private Map<String, LegText> texts = new LinkedHashMap<>();
  private Map<String, List<LegText>> members = Map.of();
  private Map<String, LayoutPump> pumps = Map.of();
  private Optional<DraftText> draft = Optional.empty();
  private final Map<String, LegJob> read = new HashMap<>();
  private final List<Problem> problems = new ArrayList<>();

  private LayoutForm(LayoutText text) {
    this.shared = text.answers();
    this.points = text.points();
    for (LegText leg : text.legs()) {
      if (texts.put(leg.name(), leg) != null) {
        problems.add(
            Problem.of("leg", leg.name(), "a name of its own: another leg is called the same"));
      }
    }
    if (text.legs().size() > MOST_LEGS) {
      problems.add(
          Problem.of("legs", text.legs().size() + " legs", "at most " + MOST_LEGS + " legs"));
    }
  }

  /**
   * The layout that a text states.
   *
   * @throws BadInputException naming every leg and answer that cannot be used
   */
  public static LayoutJob read(LayoutText text) {
    LayoutForm form = new LayoutForm(text);
    form.words();
    form.points();
    form.places();
    form.stopIfWrong();
    form.texts.keySet().forEach(form::leg);
    form.discharges();
    form.stopIfWrong();
    LayoutJob layout = form.boosted(new LayoutJob(form.inOrder(), form.pumps));
    form.stopIfWrong();
    return layout;
  }

  /** With the pumps on the way that legs wish. */
  private LayoutJob boosted(LayoutJob layout) {
    LayoutJob so = layout;
    List<String> asNeeded = new ArrayList<>();
    for (LegJob leg : layout.legs()) {
      Optional<BoosterWish> wish =
          BoosterWish.read(texts.get(leg.name()), leg.job().run().lengthFt(), problems);
      wish.ifPresent(one -> boostable(leg, one.asNeeded()));
      if (wish.filter(BoosterWish::asNeeded).isPresent()) {
        asNeeded.add(leg.name());
      } else if (wish.isPresent()) {
        so = so.boosted(leg.name(), wish.get().places());
      }
    }
    if (asNeeded.size() > 1) {
      problems.add(
          Problem.of(
              in(asNeeded.get(1), BoosterWish.BOOSTERS),
              "as needed",
              "said of one leg: " + asNeeded.get(0) + " has it; name the pumps of this one"));
    }
    return new LayoutJob(so.legs(), so.pumps(), so.boosters(), asNeeded);
  }

  /** Pumps stand on ground that is taken as even, in one line, under pressure. */
  private void boostable(LegJob leg, boolean asNeeded) {
    String why =
        leg.job().run().way().isSurveyed()
            ? "left out beside a route: list legs to where each pump stands"
            : leg.copies() > 1
                ? "left out beside copies: a pump stands in one line"
                : leg.job().source() == SourceKind.OPEN_WATER
                    ? "left out of a suction leg: the pump stands where it ends"
                    : asNeeded && (leg.behind().isPresent() || leg.job().supply().isEmpty())
                        ? "said of a leg that begins at a source which says what it gives;"
                            + " elsewhere name the places: 'pump: booster at 1800 ft'"
                        : "";
    if (!why.isEmpty()) {
      problems.add(Problem.of(in(leg.name(), BoosterWish.BOOSTERS), "a pump", why));
    }
  }

  private void stopIfWrong() {
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }

  /** Where legs meet at a pump. */
  private void points() {
    draft = DraftText.read(shared, problems);
    LayoutJoins joins = new LayoutJoins(points, texts, problems);
    texts = joins.legs();
    members = joins.members();
    points = joins.pumps();
    // What is put together wrongly would be told again, and otherwise.
    stopIfWrong();
    LayoutPoints read = new LayoutPoints(points, texts, draft, problems);
    texts = read.placed();
    pumps = read.pumps(texts);
    if (DraftText.asked(shared)) {
      drawn();
    }
  }

  /** Water that nothing pushes is drawn by one leg, to one pump. */
  private void drawn() {
    List<LegText> first = texts.values().stream().filter(leg -> leg.behind().isEmpty()).toList();
    for (LegText leg : first) {
      if (first.size() > 1 || !pumps.containsKey(leg.name()) && problems.isEmpty()) {
        problems.add(
            Problem.of(
                in(leg.name(), "ends"),
                leg.points().ends().orElse(""),
                "one suction leg that ends at a pump: nothing but a pump draws open water. List it"
                    + " under points, 'is: pump', with intake, discharges and pump-curve"));
      }
      if (!leg.copies().isBlank()) {
        problems.add(
            Problem.of(in(leg.name(), "copies"), leg.copies(), "left out: one line draws"));
      }
    }
  }

  /** Each line behind a pump has a discharge of its own. */
  private void discharges() {
    Map<String, Integer> copies = new HashMap<>();
    read.values().forEach(leg -> copies.put(leg.name(), leg.outlets()));
    new LayoutPoints(points, texts, draft, problems).enoughDischarges(pumps, texts, copies);
  }

  /** Each answer stands where it belongs. */
  private void words() {
    shared.forEach(
        (field, answer) -> {
          if (OF_A_LEG.contains(field)) {
            problems.add(Problem.of(field.word(), answer, "said in the leg that it is about"));
          } else if (SHORT_WORDS.contains(field)
              && !(field.equals(JobField.LIFT) && DraftText.asked(shared))) {
            problems.add(Problem.of(field.word(), answer, "left out where legs are listed"));
          }
        });
    for (LegText leg : texts.values()) {
      leg.answers()
          .forEach(
              (field, answer) -> {
                if (!OF_A_LEG.contains(field) && !field.equals(JobField.PUMP_CURVE)) {
                  problems.add(
                      Problem.of(
                          in(leg.name(), field.word()),
                          answer,
                          "said once for all legs, above them"));
                }
              });
    }
  }

  /** Every leg begins at the source or where another ends, and ends at an appliance or at legs. */
  private void places() {
    for (LegText leg : texts.values()) {
      leg.behind().filter(name -> !texts.containsKey(name)).ifPresent(name -> noSuch(leg, name));
      if (isRing(leg)) {
        problems.add(
            Problem.of(
                in(leg.name(), "behind"),
                leg.behind().orElse(""),
                "a leg that leads back to the source: this one runs in a ring"));
      }
      boolean ends = behind(leg.name()).isEmpty();
      for (JobField field : OF_AN_END) {
        if (!ends && leg.answers().containsKey(field)) {
          problems.add(
              Problem.of(
                  in(leg.name(), field.word()),
                  leg.answers().get(field),
                  "left out: other legs begin where this one ends ("
                      + String.join(", ", behind(leg.name()).stream().map(LegText::name).toList())
                      + "), so nothing else can stand there"));
        }
      }
    }
  }

  private void noSuch(LegText leg, String name) {
    List<String> others =
        texts.keySet().stream().filter(other -> !other.equals(leg.name())).toList();
    problems.add(
        new Problem(
            in(leg.name(), "behind"),
            name,
            others.isEmpty()
                ? "left out: there is no other leg"
                : "another leg: " + String.join(", ", others),
            Nearest.to(name, others)));
  }

  private boolean isRing(LegText leg) {
    Set<String> passed = new LinkedHashSet<>();
    Optional<LegText> at = Optional.of(leg);
    while (at.isPresent()) {
      if (!passed.add(at.get().name())) {
        return true;
      }
      at = at.get().behind().map(texts::get);
    }
    return false;
  }

  private List<LegText> behind(String name) {
    return texts.values().stream().filter(leg -> leg.behind().equals(Optional.of(name))).toList();
  }

  /** Reads a leg, once those behind it are read, for their flow is its own. */
  private Optional<LegJob> leg(String name) {
    if (read.containsKey(name)) {
      return Optional.of(read.get(name));
    }
    LegText text = texts.get(name);
    List<LegText> behind = behind(name);
    double flowGpm = 0;
    for (LegText one : behind) {
      Optional<LegJob> leg = leg(one.name());
      if (leg.isEmpty()) {
        return Optional.empty();
      }
      flowGpm += leg.get().flowGpm();
    }
    Map<JobField, String> answers = new TreeMap<>(shared);
    members.getOrDefault(name, List.of()).stream()
        .findFirst()
        .ifPresent(first -> answers.putAll(first.answers()));
    answers.putAll(text.answers());
    if (text.answers().containsKey(JobField.PUMP_CURVE)) {
      // Of the pump it begins at, not of the source.
      answers.remove(JobField.PUMP_CURVE);
      Optional.ofNullable(shared.get(JobField.PUMP_CURVE))
          .ifPresent(curve -> answers.put(JobField.PUMP_CURVE, curve));
    }
    Optional<LayoutPump> pump = Optional.ofNullable(pumps.get(name));
    draft.ifPresent(one -> drawing(one, text, pump, answers));
    if (!behind.isEmpty()) {
      answers.put(JobField.TO, pump.map(one -> one.intake().toString()).orElse(UNTIL_PLANNED));
      answers.put(JobField.FLOW, flowGpm + " gpm");
      double needPsi = Math.max(0, pump.map(LayoutPump::leastIntakePsi).orElse(0.0));
      answers.put(JobField.NEED, needPsi + " psi");
    }
    Optional<Job> job =
        job(name, answers)
            .map(
                one ->
                    pump.flatMap(LayoutPump::drafting)
                        .map(drawn -> one.flowing(one.flowGpm(), drawn.leastIntakePsi()))
                        .orElse(one));
    int copies = copies(text, behind);
    boolean last = behind.isEmpty();
    job.ifPresent(
        one ->
            read.put(
                name,
                new LegJob(name, text.behind(), copies, one, last, joined(text, one, answers))));
    return Optional.ofNullable(read.get(name));
  }

  /**
   * The legs that one is made of, each with an even share of its flow until lines are chosen.
   *
   * @param answers what is said of all of them together
   */
  private List<LegJob> joined(LegText text, Job together, Map<JobField, String> answers) {
    List<LegText> said = members.getOrDefault(text.name(), List.of());
    List<LegJob> joined = new ArrayList<>();
    for (LegText member : said) {
      Map<JobField, String> so = new TreeMap<>(answers);
      OF_A_LEG.forEach(so::remove);
      so.putAll(member.answers());
      so.put(JobField.TO, answers.get(JobField.TO));
      so.put(JobField.FLOW, together.flowGpm() / said.size() + " gpm");
      so.put(JobField.NEED, together.needPsi() + " psi");
      boolean last = behind(text.name()).isEmpty();
      job(member.name(), so)
          .ifPresent(
              job -> {
                alike(together, member, job);
                joined.add(new LegJob(member.name(), text.behind(), 1, job, last));
              });
    }
    return joined;
  }

  /** What begins at one place and ends at one rises alike. */
  private void alike(Job together, LegText member, Job job) {
    double riseFt = together.run().riseFt();
    if (Math.abs(job.run().riseFt() - riseFt) > LEAST_UNLIKE_FT) {
      problems.add(
          new Problem(
              in(member.name(), JobField.RISE.word()),
              job.run().riseFt() + " ft",
              "the rise of the legs it meets, since all begin at one place and end at one",
              riseFt + " ft"));
    }
  }

  /** A suction leg rises by the lift and has no slack; what lies behind its pump knows neither. */
  private void drawing(
      DraftText drawn, LegText leg, Optional<LayoutPump> pump, Map<JobField, String> answers) {
    answers.remove(JobField.LIFT);
    if (leg.behind().isPresent()) {
      Optional.ofNullable(pumps.get(leg.behind().get()))
          .map(one -> one.discharges().get(0) + " pump")
          .or(() -> Optional.of("2.5 NH male outlet"))
          .ifPresent(from -> answers.put(JobField.FROM, from));
      return;
    }
    answers.put(
        JobField.FROM,
        pump.map(one -> one.intake().toString()).orElse("2.5 NH male") + " open_water");
    answers.putIfAbsent(JobField.SLACK, "0 %");
    if (!answers.containsKey(JobField.ROUTE)) {
      answers.putIfAbsent(JobField.RISE, drawn.liftFt() + " ft");
    }
  }

  private Optional<Job> job(String leg, Map<JobField, String> answers) {
    try {
      return Optional.of(JobForm.read(answers));
    } catch (BadInputException e) {
      for (Problem problem : e.problems()) {
        boolean ofAll =
            JobField.of(problem.field()).filter(field -> !OF_A_LEG.contains(field)).isPresent();
        Problem named =
            ofAll
                ? problem
                : new Problem(
                    in(leg, problem.field()),
                    problem.value(),
                    problem.allowed(),
                    problem.nearest());
        if (!problems.contains(named)) {
          problems.add(named);
        }
      }
      return Optional.empty();
    }
  }

  private int copies(LegText text, List<LegText> behind) {
    if (text.copies().isBlank()) {
      return 1;
    }
    String allowed = "a whole number from 1 to " + MOST_COPIES;
    try {
      int copies = Integer.parseInt(text.copies().strip());
      if (copies > 1 && !behind.isEmpty()) {
        problems.add(
            Problem.of(
                in(text.name(), "copies"),
                text.copies(),
                "left out: legs begin where this one ends, so each copy is a leg of its own"));
      }
      if (copies >= 1 && copies <= MOST_COPIES) {
        return copies;
      }
    } catch (NumberFormatException e) {
      // Told below.
    }
    problems.add(Problem.of(in(text.name(), "copies"), text.copies(), allowed));
    return 1;
  }

  private List<LegJob> inOrder() {
    List<LegJob> order = new ArrayList<>();
    for (LegText leg : texts.values()) {
      if (leg.behind().isEmpty()) {
        add(leg.name(), order);
      }
    }
    return order;
  }

  private void add(String name, List<LegJob> order) {
    order.add(read.get(name));
    behind(name).forEach(leg -> add(leg.name(), order));
  }

  private static String in(String leg, String field) {
    return "leg " + leg + ": " + field;
  }
}
