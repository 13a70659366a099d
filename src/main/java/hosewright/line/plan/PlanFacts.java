package hosewright.line.plan;

import hosewright.hydraulics.Inlet;
import hosewright.job.Job;
import hosewright.job.Limit;
import hosewright.job.question.ApplianceKind;
import hosewright.job.question.Asked;
import hosewright.job.question.SourceKind;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.Placed;
import hosewright.line.check.Checks;
import hosewright.line.check.NearLimits;
import hosewright.line.model.Check;
import hosewright.line.model.CheckId;
import hosewright.line.search.Evaluated;
import hosewright.line.water.LegFigures;
import hosewright.line.water.PlanHydraulics;
import hosewright.measure.Measures;
import hosewright.thread.Verdict;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.DoubleSupplier;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * What is known of a plan, by the name that a table of cautions calls it: what is so or not, what
 * is said in words, and figures, which may also stand in a sentence in braces.
 */
final class PlanFacts {
  private static final Map<String, Predicate<Planned>> SO = new LinkedHashMap<>();
  private static final Map<String, Words> WORDS = new LinkedHashMap<>();
  private static final Map<String, Figure> FIGURES = new LinkedHashMap<>();

  static {
    SO.put("pressures are calculated", of -> of.plan().hydraulics().calculated());
    SO.put("the ground between is taken as even", of -> of.job().run().way().takenAsEven());
    SO.put("wheels cross the hose", PlanFacts::crossed);
    SO.put("hose is made up", PlanFacts::madeUp);
    SO.put("hose has no service test", PlanFacts::burstIsReckoned);
    SO.put("a part is to be sourced", of -> of.plan().assembly().hasPartToSource());
    SO.put("a part weakens when warm", PlanFacts::weakens);
    SO.put("slack takes a section", PlanFacts::slackTakesASection);
    SO.put("the water is not for a fire", of -> !of.job().service().use().isFire());
    SO.put("sudden closure is within the rating", PlanFacts::bearsSuddenClosure);
    SO.put("a limit is near", of -> !NearLimits.of(of.job(), of.checks()).isEmpty());

    words("source", SourceKind.values(), of -> Stream.of(of.job().source()));
    words("appliance", ApplianceKind.values(), of -> Stream.of(of.job().appliance()));
    // Of any joint.
    words("verdict", Verdict.Outcome.values(), of -> verdicts(of).map(Verdict::outcome));
    words("seal", Verdict.Seal.values(), of -> verdicts(of).map(Verdict::seal));

    figure(
        "surge",
        "psi",
        Measures::pressurePsi,
        of -> OptionalDouble.of(of.plan().hydraulics().surgeHighPsi()));
    figure(
        "least surge",
        "psi",
        Measures::pressurePsi,
        of -> OptionalDouble.of(of.plan().hydraulics().surgeLowPsi()));
    figure("reaction", "lbf", Measures::forceLbf, PlanFacts::reactionLbf);
    figure(
        "water in the line",
        "gal",
        Measures::volumeGal,
        of -> OptionalDouble.of(of.whole().waterGal().getAsDouble()));
    figure("pressure to set", "psi", Measures::pressurePsi, PlanFacts::toSetPsi);
    figure("source pressure there", "psi", Measures::pressurePsi, PlanFacts::sourcePsi);
    figure("source to spare", "psi", Measures::lossPsi, PlanFacts::toSparePsi);
    figure("flow fully open", "gpm", Measures::flowGpm, of -> open(of, Flowing.Arrives::flowGpm));
    figure(
        "pressure fully open",
        "psi",
        Measures::pressurePsi,
        of -> open(of, Flowing.Arrives::deliveredPsi));
    figure("reaction fully open", "lbf", Measures::forceLbf, PlanFacts::openReactionLbf);
    figure("working pressure", "psi", Measures::lossPsi, PlanFacts::workingPsi);
    figure("burst pressure", "psi", Measures::lossPsi, PlanFacts::burstPsi);
  }

  /** So little over a whole psi is rounding. */
  private static final double HAIR_PSI = 1e-6;

  private PlanFacts() {}

  /**
   * A plan, or one leg of a layout, and what it was planned for.
   *
   * @param checks every check it will show
   * @param whole what is so of all legs together
   */
  record Planned(Job job, Evaluated plan, List<Check> checks, Whole whole) {
    /** Of one that is the whole. */
    static Planned alone(Job job, Evaluated plan, List<Check> checks) {
      return new Planned(job, plan, checks, new Whole(checks, () -> waterGal(job, plan)));
    }
  }

  /**
   * All legs together.
   *
   * @param checks every check that is shown
   * @param waterGal what all hose holds, gal
   */
  record Whole(List<Check> checks, DoubleSupplier waterGal) {}

  /**
   * A fact said in words.
   *
   * @param allowed every word it may be
   * @param of those it is
   */
  record Words(List<String> allowed, Function<Planned, List<String>> of) {}

  /**
   * A fact that is a number.
   *
   * @param reader what it is compared with, from text
   */
  record Figure(
      String unit,
      BiFunction<String, String, Double> reader,
      Function<Planned, OptionalDouble> of) {

    String text(Planned planned) {
      return Checks.text("%.0f %s", of.apply(planned).orElse(0), unit);
    }
  }

  /** Sentences that are so of a plan, or not. */
  static Map<String, Predicate<Planned>> so() {
    return SO;
  }

  static Map<String, Words> words() {
    return WORDS;
  }

  static Map<String, Figure> figures() {
    return FIGURES;
  }

  private static <E extends Enum<E>> void words(
      String name, E[] all, Function<Planned, Stream<E>> of) {
    WORDS.put(
        name,
        new Words(
            Arrays.stream(all).map(PlanFacts::word).toList(),
            planned -> of.apply(planned).map(PlanFacts::word).distinct().toList()));
  }

  private static void figure(
      String name,
      String unit,
      BiFunction<String, String, Double> reader,
      Function<Planned, OptionalDouble> of) {
    FIGURES.put(name, new Figure(unit, reader, of));
  }

  private static String word(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT);
  }

  private static Stream<Verdict> verdicts(Planned of) {
    return of.plan().assembly().joints().stream().map(Assembly.MadeJoint::verdict);
  }

  /** By the low estimate of what a slammed valve adds. */
  private static boolean bearsSuddenClosure(Planned of) {
    return of.whole().checks().stream()
        .filter(check -> check.id() == CheckId.SUDDEN_CLOSURE)
        .allMatch(check -> check.outcome() == Check.Outcome.PASS);
  }

  private static boolean crossed(Planned of) {
    return of.job().accessories().stream().anyMatch(asked -> Asked.of(asked).lanes().isPresent());
  }

  private static boolean madeUp(Planned of) {
    return of.plan().assembly().topology().legs().stream()
        .anyMatch(leg -> leg.hose().finish().madeUp());
  }

  private static boolean weakens(Planned of) {
    return of.plan().assembly().parts().stream()
        .anyMatch(part -> !part.rating().derating().isEmpty());
  }

  private static OptionalDouble reactionLbf(Planned of) {
    return of.plan()
        .hydraulics()
        .reactionLbf()
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }

  /** What brings just the pressure needed, to the next psi, where the source could give more. */
  private static OptionalDouble toSetPsi(Planned of) {
    return toSparePsi(of).isPresent()
        ? OptionalDouble.of(Math.ceil(of.plan().hydraulics().requiredSourcePsi() - HAIR_PSI))
        : OptionalDouble.empty();
  }

  /** What the source gives; a leg within a layout is fed by what stands before it, not by one. */
  private static OptionalDouble sourcePsi(Planned of) {
    if (of.job().supply().filter(Inlet.class::isInstance).isPresent()) {
      return OptionalDouble.empty();
    }
    return of.plan()
        .hydraulics()
        .sourcePsi()
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }

  /** What a source gives beyond what a line that passes needs of it. */
  private static OptionalDouble toSparePsi(Planned of) {
    OptionalDouble sourcePsi = sourcePsi(of);
    return sourcePsi.isEmpty() || !of.plan().passes() || !of.plan().hydraulics().calculated()
        ? OptionalDouble.empty()
        : OptionalDouble.of(sourcePsi.getAsDouble() - of.plan().hydraulics().requiredSourcePsi());
  }

  /** What the source brings with everything open; nothing where it brings what was asked for. */
  private static OptionalDouble open(Planned of, ToDoubleFunction<Flowing.Arrives> figure) {
    return toSparePsi(of).isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            figure.applyAsDouble(Flowing.of(of.job(), of.plan().assembly()).arrives()));
  }

  /** Of each nozzle or monitor, with what the source brings with everything open. */
  private static OptionalDouble openReactionLbf(Planned of) {
    OptionalDouble flowGpm = open(of, Flowing.Arrives::flowGpm);
    OptionalDouble psi = open(of, Flowing.Arrives::deliveredPsi);
    return reactionLbf(of).isEmpty() || flowGpm.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            PlanHydraulics.nozzleReactionLbf(
                of.job(), flowGpm.getAsDouble() / of.job().appliances(), psi.orElse(0)));
  }

  /** Whether some leg would be covered by a section less without the slack. */
  private static boolean slackTakesASection(Planned of) {
    Assembly line = of.plan().assembly();
    double stretched = 1 + of.job().run().slack();
    for (int i = 0; i < line.lays().size(); i++) {
      LegShape leg = line.topology().legs().get(i);
      if (leg.hose().withoutShortestFt(line.lays().get(i)) >= leg.neededFt() / stretched - 1e-6) {
        return true;
      }
    }
    return false;
  }

  /** In every line and every leg. */
  static double waterGal(Job job, Evaluated plan) {
    return LegFigures.of(job, plan.assembly()).stream().mapToDouble(LegFigures::allWaterGal).sum();
  }

  /** Hose tested in service has its burst in its standard, so that no ratio is guessed for it. */
  private static boolean burstIsReckoned(Planned of) {
    return workingPsi(of).isPresent()
        && of.plan().assembly().parts().stream()
            .filter(Placed::isHose)
            .allMatch(hose -> hose.rating().serviceTestPsi().isEmpty());
  }

  private static OptionalDouble workingPsi(Planned of) {
    return of.plan().assembly().hoseWorkingPsi(of.job().service().temperatureOrUsualF());
  }

  private static OptionalDouble burstPsi(Planned of) {
    OptionalDouble workingPsi = workingPsi(of);
    return workingPsi.isEmpty()
        ? workingPsi
        : OptionalDouble.of(workingPsi.getAsDouble() * designRatio(workingPsi.getAsDouble()));
  }

  /** How often its working pressure water hose is made to bear. */
  static double designRatio(double workingPsi) {
    return workingPsi <= Limit.DESIGN_RATIO_PSI.value()
        ? Limit.DESIGN_RATIO_LOW.value()
        : Limit.DESIGN_RATIO_HIGH.value();
  }
}
