package hosewright.line.plan;

import hosewright.job.Job;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.line.assembly.Assembly;
import java.util.Locale;

/** A layout in a few sentences of plain words. */
final class LayoutSentence {
  private LayoutSentence() {}

  static String of(LayoutJob layout) {
    Job whole = layout.whole();
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            Locale.ROOT,
            "From %s, %d legs, %s gpm of %s in all, plus %.0f %% slack.",
            source(layout),
            layout.legs().size(),
            PlanSentence.tenths(layout.flowGpm()),
            whole.service().fluid(),
            layout.legs().get(layout.legs().size() - 1).job().run().slack() * 100));
    layout.legs().forEach(leg -> text.append(' ').append(leg(leg)));
    return text + PlanSentence.leftAside(whole);
  }

  private static String source(LayoutJob layout) {
    Job whole = layout.whole();
    return layout
        .drafting()
        .map(
            drawn ->
                String.format(
                    Locale.ROOT,
                    "open water %s ft below the pump",
                    PlanSentence.tenths(drawn.liftFt())))
        .orElseGet(
            () ->
                PlanSentence.withArticle(Assembly.describe(whole.source()))
                    + " ("
                    + whole.from()
                    + ")");
  }

  private static String leg(LegJob leg) {
    Job job = leg.job();
    double riseFt = job.run().riseFt();
    String rise =
        riseFt == 0
            ? ""
            : String.format(
                Locale.ROOT,
                ", %s ft %s",
                PlanSentence.tenths(Math.abs(riseFt)),
                riseFt > 0 ? "up" : "down");
    String where = leg.behind().map(name -> " behind " + name).orElse("");
    String copies = leg.copies() > 1 ? leg.copies() + " lines of " : "";
    String ends =
        leg.last()
            ? String.format(
                Locale.ROOT,
                " to %s (%s): %s gpm at %s psi%s",
                PlanSentence.withArticle(Assembly.describe(job.appliance())),
                job.to(),
                PlanSentence.tenths(job.flowGpm()),
                PlanSentence.tenths(job.needPsi()),
                leg.copies() > 1 ? " each" : "")
            : "";
    return sentence(leg.name())
        + where
        + ": "
        + copies
        + PlanSentence.tenths(job.run().lengthFt())
        + " ft"
        + rise
        + ends
        + ".";
  }

  private static String sentence(String name) {
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }
}
