package hosewright.line.plan;

import hosewright.job.Job;
import hosewright.job.Network;
import hosewright.line.assembly.Assembly;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
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
        job.run().riseFt() == 0
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
  private static String tenths(double value) {
    return BigDecimal.valueOf(value)
        .setScale(1, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  static String withArticle(String thing) {
    return ("aeiou".indexOf(thing.charAt(0)) < 0 ? "a " : "an ") + thing;
  }
}
