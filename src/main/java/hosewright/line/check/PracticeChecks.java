package hosewright.line.check;

import static hosewright.line.check.Checks.check;
import static hosewright.line.check.Checks.text;

import hosewright.job.Job;
import hosewright.job.question.Practice;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Between;
import hosewright.line.assembly.Topology;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Checks on what no law of water forbids and nobody in the trade would lay. */
public final class PracticeChecks {
  private static final Practice NARROW = rule(CheckId.NARROW_FITTING);
  private static final Practice REDUCED = rule(CheckId.REDUCED_DEVICE);

  /** Far below any difference of bores, far above what dividing two sizes may lose. */
  private static final double HAIR = 1e-9;

  private PracticeChecks() {}

  private static Practice rule(CheckId check) {
    return Practice.named(check.word());
  }

  static List<Check> of(Job job, Assembly line) {
    List<Check> checks = new ArrayList<>();
    waterways(job, Between.of(line.parts())).ifPresent(checks::add);
    return checks;
  }

  /** Whether what stands somewhere is as wide as the trade wants it there. */
  public static boolean wideEnough(double hasIn, double leastIn) {
    return hasIn >= leastIn * NARROW.limit().orElseThrow() * (1 - HAIR);
  }

  /** Whether parts that a buyer lifts no rule for may stand in a line where they do. */
  public static boolean keepsWaterways(Job job, Topology topology) {
    return job.lifts(NARROW)
        || topology.between(job.from(), job.to()).stream()
            .flatMap(between -> between.held().stream())
            .allMatch(held -> wideEnough(held.hasIn(), held.leastIn()));
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
    return all.stream()
        .flatMap(between -> between.held().stream())
        .min(Comparator.comparingDouble(held -> held.hasIn() / held.leastIn()))
        .map(
            held -> {
              boolean wide = wideEnough(held.hasIn(), held.leastIn());
              String note =
                  wide
                      ? "no part is narrower than the line it stands in"
                      : text(
                          "%s is %s in wide where the line on both sides is %s in or more",
                          held.part().description(), plain(held.hasIn()), plain(held.leastIn()));
              return check(
                  CheckId.NARROW_FITTING,
                  wide ? Outcome.PASS : job.lifts(NARROW) ? Outcome.WARN : Outcome.FAIL,
                  held.hasIn(),
                  held.leastIn(),
                  "in",
                  note,
                  NARROW.source());
            });
  }

  private static String plain(double sizeIn) {
    return BigDecimal.valueOf(sizeIn).stripTrailingZeros().toPlainString();
  }
}
