package hosewright.line.plan;

import hosewright.hydraulics.Ground;
import hosewright.job.Job;
import hosewright.job.Network;
import hosewright.line.assembly.Assembly;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The job in one sentence of plain words. */
final class PlanSentence {
  private PlanSentence() {}

  static String of(Job job) {
    return line(job) + leftAside(job);
  }

  /** The rules of the trade that the buyer lifts, so that every paper says so. */
  static String leftAside(Job job) {
    return job.conditions().allowed().stream()
        .map(rule -> " The buyer allows " + rule.about() + " (" + rule.id() + ").")
        .collect(Collectors.joining());
  }

  private static String line(Job job) {
    String rise =
        job.run().way().ground().isPresent()
            ? route(job.run().way().ground().get())
            : job.run().riseFt() == 0
                ? " on the level"
                : String.format(
                    Locale.ROOT,
                    ", %s ft %s,",
                    tenths(Math.abs(job.run().riseFt())),
                    job.run().riseFt() > 0 ? "up" : "down");
    if (job.attack().isPresent()) {
      return branched(job, job.attack().get(), rise);
    }
    String source = Assembly.describe(job.source());
    return String.format(
        Locale.ROOT,
        "From %s (%s) to %s (%s), %s ft%s plus %.0f %% slack: %s gpm of %s at %s psi.",
        job.outlets() > 1
            ? job.outlets() + " like outlets, " + source + " each"
            : withArticle(source),
        job.from(),
        withArticle(Assembly.describe(job.appliance())),
        job.to(),
        tenths(job.run().lengthFt()),
        rise,
        job.run().slack() * 100,
        tenths(job.flowGpm()),
        job.service().fluid(),
        tenths(job.needPsi()));
  }

  /** The lowest and the highest place between the ends, and where the far end lies. */
  private static String route(Ground ground) {
    List<String> places = new ArrayList<>();
    place(ground, "lowest", ground.lowestFt()).ifPresent(places::add);
    place(ground, "highest", ground.highestFt()).ifPresent(places::add);
    places.add(
        ground.riseFt() == 0
            ? "the far end level with the source"
            : "the far end " + height(ground.riseFt()));
    return " by the route given (" + String.join(", ", places) + "),";
  }

  private static Optional<String> place(Ground ground, String which, double heightFt) {
    return ground.points().stream()
        .filter(point -> point.heightFt() == heightFt)
        .filter(point -> point.alongFt() > 0 && point.alongFt() < ground.lengthFt())
        .findFirst()
        .map(point -> which + " " + height(heightFt) + " at " + tenths(point.alongFt()) + " ft");
  }

  private static String height(double overSourceFt) {
    return tenths(Math.abs(overSourceFt))
        + " ft "
        + (overSourceFt > 0 ? "above the source" : "below the source");
  }

  private static String branched(Job job, Network.Attack attack, String rise) {
    return String.format(
        Locale.ROOT,
        "From %s (%s) %s ft to a wye and by %d lines of %s ft each to %s of its own (%s)%s plus"
            + " %.0f %% slack: %s gpm of %s at %s psi for each.",
        withArticle(Assembly.describe(job.source())),
        job.from(),
        tenths(job.run().lengthFt()),
        attack.lines(),
        tenths(attack.lengthFt()),
        withArticle(Assembly.describe(job.appliance())),
        job.to(),
        rise.startsWith(",") ? rise : "," + rise,
        job.run().slack() * 100,
        tenths(job.flowEachGpm()),
        job.service().fluid(),
        tenths(job.needPsi()));
  }

  /** To a tenth, so that a measure given in other units comes back as it was given. */
  static String tenths(double value) {
    return BigDecimal.valueOf(value)
        .setScale(1, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  static String withArticle(String thing) {
    return ("aeiou".indexOf(thing.charAt(0)) < 0 ? "a " : "an ") + thing;
  }
}
