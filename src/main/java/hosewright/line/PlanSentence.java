package hosewright.line;

import java.util.Locale;

/** The job in one sentence of plain words. */
final class PlanSentence {
  private PlanSentence() {}

  static String of(Job job) {
    String rise =
        job.run().riseFt() == 0
            ? "on the level"
            : String.format(
                Locale.ROOT,
                "%.0f ft %s",
                Math.abs(job.run().riseFt()),
                job.run().riseFt() > 0 ? "up" : "down");
    return String.format(
        Locale.ROOT,
        "From a %s (%s) to a %s (%s), %.0f ft %s plus %.0f %% slack: %.0f gpm of %s at %.0f psi.",
        Assembly.describe(job.source()),
        job.from(),
        Assembly.describe(job.appliance()),
        job.to(),
        job.run().lengthFt(),
        rise,
        job.run().slack() * 100,
        job.flowGpm(),
        job.service().fluid(),
        job.needPsi());
  }
}
