package hosewright.job.question;

import static hosewright.job.question.Asking.answered;
import static hosewright.job.question.Asking.says;
import static hosewright.job.question.QuestionDraft.measured;
import static hosewright.job.question.QuestionDraft.oneOf;
import static hosewright.job.question.QuestionDraft.plain;
import static hosewright.job.question.QuestionDraft.yesOrNo;

import hosewright.hydraulics.PumpCurve;
import hosewright.job.question.EndPhrase.Phrase;
import hosewright.measure.Measures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.joda.money.Money;

/**
 * The questions a job answers. The word is at once the option of a command, the key of a job file,
 * the column of a tender and the field an error names.
 *
 * <p>All that is known of a question stands here with it: how its answer is read and what is
 * allowed, what is taken where it is left open, how a person is asked and what is offered. They are
 * asked in this order. Its answer is a fact that a caution may rest on, by its word.
 */
public abstract sealed class JobField extends FieldFacts implements Comparable<JobField>
    permits Question {
  private static final List<JobField> ALL = new ArrayList<>();

  public static final Question<String> TITLE =
      add(
          plain("title", "TEXT", AnswerReading::text)
              .means("a short name for the papers", "Barn fill from the lane hydrant")
              .asks("A short name for the papers?")
              .atLast());

  public static final Question<Phrase<SourceKind>> FROM =
      add(
          plain("from", "END", (field, text) -> EndPhrase.source(text))
              .means("end of the source; say what it is if you know", "2.5 NH male hydrant")
              .required()
              .offering(Offer.SOURCES)
              .asks("What does the line start at?"));

  public static final Question<Phrase<ApplianceKind>> TO =
      add(
          plain("to", "END", (field, text) -> EndPhrase.appliance(text))
              .means("end of the appliance; say what it is if you know", "1.5 NH female nozzle")
              .required()
              .offering(Offer.APPLIANCES)
              .asks("What must it feed?"));

  /** A surveyed way says how long and how high at once. */
  public static final Question<Route> ROUTE =
      add(
          plain("route", "FILE", (field, text) -> new RouteForm(field).read(text))
              .means(
                  "CSV file of distance, elevation and note along the way, instead of length and"
                      + " rise",
                  "0 ft at 0 ft; -40 ft at 300 ft, road 2 lanes; 5 ft at 500 ft")
              .unasked());

  public static final Question<Double> LENGTH =
      add(
          measured("length", "LENGTH", Measures::lengthFt)
              .means("distance along the ground", "400 ft")
              .requiredUnless(answered(ROUTE))
              .asks("How far is it along the ground, or which CSV file has the way?")
              .where(answered(ROUTE).negate()));

  /** A twentieth is common practice, no source. */
  public static final Question<Double> SLACK =
      add(
          measured("slack", "PERCENT", Measures::percent)
              .means("extra hose over the distance", "5 %")
              .usually("5 %")
              .assuming("{} more hose than the distance")
              .unasked());

  public static final Question<Double> RISE =
      add(
          measured("rise", "LENGTH", Measures::riseFt)
              .means("height of the appliance above the source; negative downhill", "20 ft")
              .usually("0 ft", "on the level")
              .assuming("level ground", answered(ROUTE).negate())
              .asks("How much higher is the far end?")
              .where(answered(ROUTE).negate()));

  public static final Question<Double> FLOW =
      add(
          measured("flow", "FLOW", Measures::flowGpm)
              .means("flow wanted at the appliance; a tip and its pressure say it too", "150 gpm")
              .requiredUnless(
                  answers ->
                      answers.containsKey(JobField.TIP) && answers.containsKey(JobField.NEED))
              .asks("How much water should arrive?"));

  public static final Question<Double> NEED =
      add(
          measured("need", "PRESSURE", Measures::lossPsi)
              .means("pressure the appliance needs at that flow", "50 psi")
              .required()
              .asks("What pressure does it need there?"));

  public static final Question<Double> TIP =
      add(
          measured("tip", "SIZE", AnswerReading::tip)
              .means("tip diameter of a smooth bore nozzle", "0.875 in")
              .unasked());

  public static final Question<Double> STATIC =
      add(
          measured("static", "PRESSURE", Measures::pressurePsi)
              .means("hydrant pressure with nothing flowing", "80 psi")
              .asks("Was the hydrant tested? Its pressure with nothing flowing?")
              .where(says(FROM, "hydrant")));

  public static final Question<Double> RESIDUAL =
      add(
          measured("residual", "PRESSURE", Measures::pressurePsi)
              .means("hydrant pressure at the test flow", "60 psi")
              .asks("And its pressure while the test flowed?")
              .neededWhere(answered(STATIC)));

  public static final Question<Double> AT =
      add(
          measured("at", "FLOW", Measures::flowGpm)
              .means("flow of the hydrant test", "900 gpm")
              .asks("How much flowed in that test?")
              .neededWhere(answered(STATIC)));

  public static final Question<Double> HYDRANT_LOSS =
      add(
          measured("hydrant-loss", "PRESSURE", Measures::lossPsi)
              .means("loss in the hydrant at the test flow", "5 psi")
              .unasked());

  public static final Question<List<PumpCurve.Point>> PUMP_CURVE =
      add(
          plain("pump-curve", "POINTS", AnswerReading::pumpPoints)
              .means(
                  "pump pressures and flows from shut-off on",
                  "180 psi at 0 gpm; 150 psi at 500 gpm")
              .unasked());

  public static final Question<Double> SOURCE_PRESSURE =
      add(
          measured("source-pressure", "PRESSURE", Measures::pressurePsi)
              .means("pressure the source holds", "150 psi")
              .assuming(
                  "a source that gives what it takes",
                  answered(STATIC).or(answered(PUMP_CURVE)).negate())
              .asks("What pressure does the source hold?")
              .where(answered(STATIC).or(answered(PUMP_CURVE)).negate()));

  public static final Question<Double> LIFT =
      add(
          measured("lift", "LENGTH", Measures::lengthFt)
              .means("height of the pump above the water it draws", "10 ft")
              .unasked());

  public static final Question<Double> ALTITUDE =
      add(
          measured("altitude", "LENGTH", Measures::altitudeFt)
              .means("height of the pump above the sea, for its lift", "1,200 ft")
              .unasked());

  public static final Question<Use> USE =
      add(
          oneOf("use", "USE", Use.words(), Use::of)
              .means(
                  "water, fire, drinking, attack, supply, wildland, standpipe or wash-down", "fire")
              .usually("water")
              .assuming("water that is neither for fire nor for drinking")
              .asks("What is it for?"));

  public static final Question<String> FLUID =
      add(
          plain(
                  "fluid",
                  "FLUID",
                  AnswerReading.notWarmth((field, text) -> text.toLowerCase(Locale.ROOT)))
              .means("what flows", "water")
              .usually("water")
              .assuming("plain water")
              .unasked());

  public static final Question<Double> TEMPERATURE =
      add(
          measured("temperature", "TEMPERATURE", Measures::temperatureF)
              .means("how warm it is", "60 F")
              .assuming("water as warm as ratings are given for")
              .unasked());

  public static final Question<String> DISTRICT =
      add(
          plain("district", "NAME", AnswerReading::text)
              .means("fire district whose threads to compare", "Port Harlow")
              .offering(Offer.DISTRICTS)
              .asks("In which fire district is it?")
              .where(forFire()));

  public static final Question<Integer> LINES =
      add(
          plain("lines", "COUNT", AnswerReading.whole(1, 3))
              .means("lines laid side by side", "1")
              .unasked());

  public static final Question<Integer> OUTLETS =
      add(
          plain("outlets", "COUNT", AnswerReading.whole(1, 3))
              .means("like outlets a line starts from each, joined by a siamese", "2")
              .unasked());

  /** A pumper's line to hand nozzles is the one that usually divides. */
  public static final Question<Integer> ATTACK_LINES =
      add(
          plain("attack-lines", "COUNT", AnswerReading.whole(2, 3))
              .means(
                  "lines behind a wye at the end of length; flow and need are then of each, rise"
                      + " to all",
                  "2")
              .asks("Does it divide at a wye, each line to its own nozzle?")
              .where(says(FROM, "pump").and(says(TO, "nozzle")).and(forFire())));

  public static final Question<Double> ATTACK_LENGTH =
      add(
          measured("attack-length", "LENGTH", Measures::lengthFt)
              .means("distance from the wye to each appliance", "150 ft")
              .asks("How far is it from the wye to each nozzle?")
              .neededWhere(answered(ATTACK_LINES)));

  public static final Question<List<Double>> SIZE =
      add(
          measured("size", "SIZE", AnswerReading::sizes)
              .means("nominal hose size, or the several allowed", "1.75 in")
              .offering(Offer.SIZES)
              .assuming("any size of hose the catalogue has, the cheapest that works")
              .asks("Must the hose be of one size?"));

  public static final Question<List<Double>> ATTACK_SIZE =
      add(
          measured("attack-size", "SIZE", AnswerReading::sizes)
              .means("nominal size of the attack lines' hose", "1.75 in")
              .offering(Offer.SIZES)
              .asks("And the hose behind the wye?")
              .where(answered(ATTACK_LINES)));

  public static final Question<Double> COUPLING_SIZE =
      add(
          measured("coupling-size", "SIZE", Measures::sizeIn)
              .means("nominal size of the hose's couplings", "1.5 in")
              .unasked());

  public static final Question<String> HOSE_THREAD =
      add(
          plain("hose-thread", "FAMILY", AnswerReading::family)
              .means("thread or coupling family of the hose", "NH")
              .offering(Offer.FAMILIES)
              .unasked());

  public static final Question<Double> SECTION =
      add(
          measured("section", "LENGTH", Measures::lengthFt)
              .means("the only section length to use", "50 ft")
              .unasked());

  public static final Question<Double> FRICTION_COEFFICIENT =
      add(
          plain("friction-coefficient", "C", AnswerReading::coefficient)
              .means("coefficient to use instead of the catalogue's", "15.5")
              .unasked());

  public static final Question<List<String>> ACCESSORIES =
      add(
          plain("accessories", "LIST", AnswerReading::accessories)
              .means(
                  "words or item numbers to add, with a count or place if need be",
                  "2 x wrench, valve at 150 ft")
              .offering(Offer.ACCESSORIES)
              .asks("Anything else with it?"));

  public static final Question<Money> BUDGET =
      add(
          plain("budget", "MONEY", AnswerReading::money)
              .means("the most the goods may cost, before freight and tax", "2500 USD")
              .unasked());

  public static final Question<Boolean> STOCK_ONLY =
      add(yesOrNo("stock-only").means("buy nothing but what lies on the shelf", "yes").unasked());

  public static final Question<LocalDate> DELIVER_BY =
      add(
          plain("deliver-by", "YYYY-MM-DD", AnswerReading::date)
              .means("day everything must be there", "2026-12-10")
              .unasked());

  /** More spare sections than this are a slip of the finger. */
  public static final Question<Integer> SPARE_SECTIONS =
      add(
          plain("spare-sections", "COUNT", AnswerReading.whole(0, 100))
              .means("sections to have beyond those laid", "2")
              .unasked());

  public static final Question<Double> SECTION_WEIGHT =
      add(
          measured("section-weight", "WEIGHT", Measures::weightLb)
              .means("most one section may weigh empty, for the crew", "60 lb")
              .unasked());

  public static final Question<List<OwnedHose>> OWNED =
      add(
          plain("owned", "SECTIONS", (field, text) -> new OwnedHoseForm(field).read(text))
              .means(
                  "sections the buyer has: laid first, only what is missing is bought",
                  "4 x 50 ft 2.5 NH tested 250 psi, 2 x 25 ft")
              .unasked());

  public static final Question<List<Practice>> ALLOW =
      add(
          plain("allow", "RULES", AnswerReading::liftable)
              .means("rules of the trade to leave aside, by name", "narrow-fitting, plain-wye")
              .unasked());

  public static final Question<String> CUSTOMER =
      add(
          plain("customer", "ID", AnswerReading::text)
              .means("whose terms price it", "COUNTER")
              .stays()
              .offering(Offer.CUSTOMERS)
              .assuming("list prices")
              .asks("Whose prices?"));

  public static final Question<LocalDate> DATE =
      add(
          plain("date", "YYYY-MM-DD", AnswerReading::date)
              .means("day the prices are of", "2026-11-25")
              .stays()
              .openSays("today")
              .assuming("the prices of today")
              .unasked());

  private static Predicate<Map<JobField, String>> forFire() {
    return Arrays.stream(Use.values())
        .filter(Use::isFire)
        .map(use -> says(USE, use.word()))
        .reduce(answers -> false, Predicate::or);
  }

  private final int place;

  JobField(QuestionDraft<?> facts, int place) {
    super(facts);
    this.place = place;
  }

  private static <T> Question<T> add(QuestionDraft<T> draft) {
    Question<T> question = new Question<>(draft, ALL.size());
    ALL.add(question);
    return question;
  }

  /** Every field, in order. */
  public static List<JobField> values() {
    return Collections.unmodifiableList(ALL);
  }

  public static Optional<JobField> of(String word) {
    return ALL.stream().filter(field -> field.word().equals(word)).findFirst();
  }

  public static List<String> words() {
    return ALL.stream().map(JobField::word).toList();
  }

  /**
   * What an answer says.
   *
   * @throws hosewright.problem.BadInputException naming this field and what is allowed
   */
  public abstract Object read(String text);

  @Override
  public final int compareTo(JobField other) {
    return Integer.compare(place, other.place);
  }
}
