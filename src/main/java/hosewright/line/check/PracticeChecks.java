package hosewright.line.check;

import static hosewright.line.check.Checks.check;
import static hosewright.line.check.Checks.text;

import hosewright.catalogue.HoseType;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.csv.PlainNumber;
import hosewright.job.Job;
import hosewright.job.question.Practice;
import hosewright.job.question.Use;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Between;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.SectionOption;
import hosewright.line.assembly.Topology;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import hosewright.line.model.Role;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Checks on what no law of water forbids and nobody in the trade would lay. */
public final class PracticeChecks {
  private static final Practice NARROW = rule(CheckId.NARROW_FITTING);
  private static final Practice PLAIN_WYE = rule(CheckId.PLAIN_WYE);
  private static final Practice TYPE = rule(CheckId.HOSE_TYPE);
  private static final Practice REDUCED = rule(CheckId.REDUCED_DEVICE);
  private static final Practice MADE_UP = rule(CheckId.MADE_UP_HOSE);
  private static final Practice SMALL = rule(CheckId.SMALL_HAND_LINE);

  /** Hose that the rule on small hand lines is about. */
  private static final double SMALL_HOSE_IN = 1.5;

  private PracticeChecks() {}

  private static Practice rule(CheckId check) {
    return Practice.named(check.word());
  }

  static List<Check> of(Job job, Assembly line) {
    List<Between> between = Between.of(line.parts());
    List<Check> checks = new ArrayList<>();
    waterways(job, between).ifPresent(checks::add);
    wye(job, line).ifPresent(checks::add);
    checks.add(hoseType(job, line));
    madeUp(job, line).ifPresent(checks::add);
    smallHandLine(job, line).ifPresent(checks::add);
    device(between).ifPresent(checks::add);
    return checks;
  }

  /** Whether a line may be laid so, as far as its hose and what must stand in it decide. */
  public static boolean keeps(Job job, Topology topology) {
    return keepsWaterways(job, topology)
        && hoseTypes(job, topology) != Outcome.FAIL
        && keepsGates(job, topology);
  }

  /** How many of these rules are broken by its hose and what must stand in it. */
  public static int broken(Job job, Topology topology) {
    return (keepsWaterways(job, topology) ? 0 : 1)
        + (hoseTypes(job, topology) != Outcome.FAIL ? 0 : 1)
        + (keepsGates(job, topology) ? 0 : 1);
  }

  private static boolean keepsGates(Job job, Topology topology) {
    return topology.fixedParts().stream()
        .allMatch(fixed -> gates(job, fixed.part().item()) != Outcome.FAIL);
  }

  private static boolean keepsWaterways(Job job, Topology topology) {
    return job.lifts(NARROW)
        || topology.between(job.from(), job.to()).stream()
            .flatMap(between -> between.held().stream())
            .allMatch(Between.Held::wideEnough);
  }

  /** Whether bridges need not be as wide as the trade wants them. */
  public static boolean anyWidth(Job job) {
    return job.lifts(NARROW);
  }

  /** Whether devices need not be of full size where one of full size is sold. */
  public static boolean anyDevice(Job job) {
    return job.lifts(REDUCED);
  }

  private static Optional<Check> waterways(Job job, List<Between> all) {
    List<Between.Held> held = all.stream().flatMap(between -> between.held().stream()).toList();
    return held.stream()
        .min(Comparator.comparingDouble(one -> one.hasIn() / one.leastIn()))
        .map(
            narrowest -> {
              boolean wide = narrowest.wideEnough();
              Optional<Placed> guessed =
                  held.stream().map(Between.Held::part).filter(PracticeChecks::guessed).findFirst();
              return check(
                  CheckId.NARROW_FITTING,
                  !wide ? against(job, NARROW) : guessed.isPresent() ? Outcome.WARN : Outcome.PASS,
                  narrowest.hasIn(),
                  narrowest.leastIn(),
                  "in",
                  wide
                      ? guessed
                          .map(
                              part ->
                                  text(
                                      "no part is narrower than the line it stands in, as far as"
                                          + " its ends tell: the catalogue does not state the"
                                          + " waterway of %s",
                                      part.itemNumber()))
                          .orElse("no part is narrower than the line it stands in")
                      : tooNarrow(narrowest),
                  NARROW.source());
            });
  }

  private static String tooNarrow(Between.Held part) {
    return text(
        "%s is %s in wide where the line is %s in on both sides",
        part.part().itemNumber(), PlainNumber.of(part.hasIn()), PlainNumber.of(part.leastIn()));
  }

  private static boolean guessed(Placed part) {
    return part.item().flatMap(Item::waterway).filter(waterway -> !waterway.known()).isPresent();
  }

  /** What comes of a line that a rule speaks against. */
  private static Outcome against(Job job, Practice rule) {
    return job.lifts(rule) ? Outcome.WARN : Outcome.FAIL;
  }

  /** How a wye stands to the rule that each hand line can be shut by itself. */
  private static Outcome gates(Job job, Item item) {
    if (item.kind() != ItemKind.WYE || !handLinesDivide(job)) {
      return Outcome.PASS;
    }
    return switch (item.form().gated()) {
      case YES -> Outcome.PASS;
      case UNKNOWN -> Outcome.WARN;
      case NO -> against(job, PLAIN_WYE);
    };
  }

  /**
   * How hose stands to the rule that its type is one the use takes.
   *
   * @param last whether its leg ends at the appliance
   */
  public static Outcome type(Job job, HoseLine hose, boolean last) {
    return hose.type() == HoseType.UNKNOWN
        ? Outcome.WARN
        : HoseTypes.of(job, last).takes().contains(hose.type()) ? Outcome.PASS : against(job, TYPE);
  }

  private static Outcome type(Job job, Topology topology, LegShape leg) {
    return type(job, leg.hose(), leg == topology.last());
  }

  private static Outcome hoseTypes(Job job, Topology topology) {
    return topology.legs().stream()
        .map(leg -> type(job, topology, leg))
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }

  private static Check hoseType(Job job, Assembly line) {
    Topology topology = line.topology();
    LegShape worst =
        topology.legs().stream()
            .max(Comparator.comparing(leg -> type(job, topology, leg)))
            .orElseThrow();
    HoseTypes types = HoseTypes.of(job, worst == topology.last());
    HoseType type = worst.hose().type();
    Outcome outcome = type(job, topology, worst);
    String note =
        type == HoseType.UNKNOWN
            ? text("what %s is made for is not known: read its jacket", worst.hose().series())
            : text(
                "%s is %s, which %s %s",
                worst.hose().series(),
                type.spoken(),
                job.service().use().word().replace('-', ' ') + " use",
                types.takes().contains(type) ? "takes" : "does not take");
    return check(
        CheckId.HOSE_TYPE, outcome, outcome == Outcome.PASS ? 1 : 0, 1, "", note, types.source());
  }

  /** Whether a line is laid only where no other does it, as far as its hose decides. */
  public static boolean ranksLast(Job job, Topology topology) {
    return topology.madeUp() && ranksMadeUpLast(job)
        || isSmall(job, topology.last()) && !job.lifts(SMALL);
  }

  /** Whether there is any hose that is laid for a job only where there is no other. */
  public static boolean mayRankLast(Job job) {
    return job.service().use().isFire();
  }

  private static boolean ranksMadeUpLast(Job job) {
    return job.service().use().isFire() && !job.lifts(MADE_UP);
  }

  /** Attack lines of the fire service; wildland hose is small and light on purpose. */
  private static boolean isSmall(Job job, LegShape leg) {
    Use use = job.service().use();
    return (use == Use.FIRE || use == Use.ATTACK)
        && job.appliance().handHeld()
        && leg.hose().sizeIn() <= SMALL_HOSE_IN
        && job.flowEachGpm() > SMALL.limit().getAsDouble();
  }

  private static Optional<Check> smallHandLine(Job job, Assembly line) {
    LegShape leg = line.topology().last();
    return !isSmall(job, leg)
        ? Optional.empty()
        : Optional.of(
            check(
                CheckId.SMALL_HAND_LINE,
                job.lifts(SMALL) ? Outcome.PASS : Outcome.WARN,
                job.flowEachGpm(),
                SMALL.limit().getAsDouble(),
                SMALL.unit(),
                text(
                    "%.0f gpm in a %s in hand line: larger hose is laid for more than %.0f gpm",
                    job.flowEachGpm(),
                    PlainNumber.of(leg.hose().sizeIn()),
                    SMALL.limit().getAsDouble()),
                SMALL.source()));
  }

  private static Optional<Check> madeUp(Job job, Assembly line) {
    int madeUp = line.sections(SectionOption::isMadeUp) + sparesMadeUp(job, line);
    return madeUp == 0 || !job.service().use().isFire()
        ? Optional.empty()
        : Optional.of(
            check(
                CheckId.MADE_UP_HOSE,
                ranksMadeUpLast(job) ? Outcome.WARN : Outcome.PASS,
                madeUp,
                0,
                "sections",
                text(
                    "%s coupled on the bench: fire hose is bought coupled where such hose does it",
                    madeUp == 1 ? "1 section is" : madeUp + " sections are"),
                MADE_UP.source()));
  }

  private static int sparesMadeUp(Job job, Assembly line) {
    int sections = 0;
    for (int i = 0; i < line.lays().size(); i++) {
      LegShape leg = line.topology().legs().get(i);
      Lay lay = line.lays().get(i);
      if (leg.hose().spare(lay).filter(SectionOption::isMadeUp).isPresent()) {
        sections += leg.hose().sparesToBuy(lay, leg.lines(), job.conditions().spareSections());
      }
    }
    return sections;
  }

  /** A device that nothing of full size could be found for. */
  private static Optional<Check> device(List<Between> all) {
    return all.stream()
        .flatMap(between -> between.reduced().stream())
        .findFirst()
        .map(
            device ->
                check(
                    CheckId.REDUCED_DEVICE,
                    Outcome.WARN,
                    device.hasIn(),
                    device.leastIn(),
                    "in",
                    text(
                        "%s is %s in in a line of %s in: none of full size is in the catalogue, or"
                            + " it was asked for by its number",
                        device.part().itemNumber(),
                        PlainNumber.of(device.hasIn()),
                        PlainNumber.of(device.leastIn())),
                    REDUCED.source()));
  }

  private static boolean handLinesDivide(Job job) {
    return job.attack().isPresent() && job.appliance().handHeld();
  }

  private static Optional<Check> wye(Job job, Assembly line) {
    return line.parts().stream()
        .filter(part -> part.role() == Role.SPLIT)
        .filter(part -> handLinesDivide(job))
        .flatMap(part -> part.item().stream())
        .findFirst()
        .map(
            item -> {
              Outcome outcome = gates(job, item);
              return check(
                  CheckId.PLAIN_WYE,
                  outcome,
                  outcome == Outcome.PASS ? 1 : 0,
                  1,
                  "",
                  switch (item.form().gated()) {
                    case YES -> "each hand line can be shut at the wye by itself";
                    case UNKNOWN ->
                        text(
                            "the catalogue does not say whether %s has a gate for each hand line",
                            item.number());
                    case NO -> text("%s has no gate for each hand line", item.number());
                  },
                  PLAIN_WYE.source());
            });
  }
}
