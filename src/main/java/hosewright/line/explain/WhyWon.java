package hosewright.line.explain;

import static hosewright.line.check.Checks.text;

import hosewright.catalogue.MoneyWords;
import hosewright.csv.PlainNumber;
import hosewright.job.Job;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.SectionOption;
import hosewright.line.assembly.Topology;
import hosewright.line.model.Hydraulics;
import hosewright.line.search.Evaluated;
import hosewright.line.search.SearchResult;
import hosewright.line.water.LegFigures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What decided for the best plan, as one would tell the buyer. */
final class WhyWon {
  private final Job job;
  private final Evaluated best;
  private final SearchResult found;
  private final Topology topology;

  WhyWon(Job job, Evaluated best, SearchResult found) {
    this.job = job;
    this.best = best;
    this.found = found;
    this.topology = best.assembly().topology();
  }

  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    sentences.add(pressure());
    sentences.addAll(size());
    for (int i = 0; i < topology.legs().size(); i++) {
      sentences.add(sections(i));
    }
    madeUp().ifPresent(sentences::add);
    sentences.add(WhyJoined.sentence(best.assembly()));
    for (LegShape leg : topology.legs()) {
      if (leg.reversed()) {
        sentences.add(
            text(
                "The %s is laid with its %s end towards the source: that way round it costs less"
                    + " to join.",
                named(leg), leg.inlet()));
      }
    }
    breaks().ifPresent(sentences::add);
    return sentences;
  }

  private String pressure() {
    Hydraulics h = best.hydraulics();
    if (!h.calculated()) {
      return "Pressures were not weighed: " + h.frictionBasis() + ".";
    }
    String takes = taken(h);
    if (h.sourcePsi().isEmpty()) {
      return text(
          "No source is stated, so the line sets what one must hold: %.1f psi. Of it %s, and %.1f"
              + " is the appliance's need.",
          h.requiredSourcePsi(), takes, job.needPsi());
    }
    return text(
        "The source gives %.1f psi at %.0f gpm and the appliance needs %.1f: %s, which leaves %.1f"
            + " psi to spare.",
        h.sourcePsi().get(), job.flowGpm(), job.needPsi(), takes, h.deliveredPsi() - job.needPsi());
  }

  private String taken(Hydraulics h) {
    List<String> taken = new ArrayList<>();
    if (topology.legs().size() > 1) {
      double attackPsi = LegFigures.of(job, best.assembly()).get(1).frictionLossPsi();
      taken.add(text("the supply hose takes %.1f psi", h.frictionLossPsi() - attackPsi));
      taken.add(text("each attack line %.1f", attackPsi));
    } else {
      taken.add(text("the hose takes %.1f psi", h.frictionLossPsi()));
    }
    if (h.elevationLossPsi() != 0) {
      taken.add(
          h.elevationLossPsi() > 0
              ? text("the rise %.1f", h.elevationLossPsi())
              : text("the fall gives %.1f back", -h.elevationLossPsi()));
    }
    double fittingsPsi = h.adapterLossPsi() + h.applianceLossPsi();
    if (fittingsPsi > 0) {
      taken.add(text("adapters and devices %.1f", fittingsPsi));
    }
    return String.join(", ", taken);
  }

  private List<String> size() {
    double sizeIn = topology.hose().sizeIn();
    List<String> sentences = new ArrayList<>();
    if (topology.lines() > 1) {
      sentences.add(
          text(
              "It takes %d lines side by side: no single line of the hose allowed does it.",
              topology.lines()));
    }
    smaller(sizeIn)
        .ifPresent(
            next ->
                sentences.add(
                    text(
                        "%s in is the smallest hose that will do: with %s in, %s.",
                        PlainNumber.of(sizeIn),
                        PlainNumber.of(size(next)),
                        new WhyLost(job, best).otherHose(next))));
    if (job.wishes().hoseSizesIn().size() == 1) {
      sentences.add("The size was named, so no other was weighed.");
    }
    return sentences;
  }

  /** The best of the next smaller size, where no smaller size passes. */
  private Optional<Evaluated> smaller(double sizeIn) {
    List<Evaluated> smaller = found.others().stream().filter(plan -> size(plan) < sizeIn).toList();
    return smaller.stream().anyMatch(Evaluated::passes)
        ? Optional.empty()
        : smaller.stream().max(Comparator.comparingDouble(WhyWon::size));
  }

  private static double size(Evaluated plan) {
    return plan.assembly().topology().hose().sizeIn();
  }

  private String named(LegShape leg) {
    return topology.legs().size() == 1
        ? "hose"
        : PlainNumber.of(leg.hose().sizeIn())
            + (leg.lines() > 1 ? " in attack hose" : " in supply hose");
  }

  private String sections(int legPlace) {
    LegShape leg = topology.legs().get(legPlace);
    Lay lay = best.assembly().lays().get(legPlace);
    List<String> laid = new ArrayList<>();
    for (int i = 0; i < lay.counts().size(); i++) {
      if (lay.counts().get(i) > 0) {
        laid.add(
            lay.counts().get(i)
                + " x "
                + PlainNumber.of(leg.hose().options().get(i).lengthFt())
                + " ft");
      }
    }
    double runFt = leg.neededFt() / (1 + job.run().slack());
    return text(
        "%s%s %s the %.0f ft needed (%.0f ft and %.0f %% slack) with %.0f ft over%s.",
        leg.lines() == 1 ? "" : "In each of the " + leg.lines() + " lines ",
        String.join(" + ", laid),
        lay.sections() == 1 ? "covers" : "cover",
        leg.neededFt(),
        runFt,
        job.run().slack() * 100,
        lay.lengthFt() - leg.neededFt(),
        leg.hose().options().size() == 1
            ? ""
            : ": of all ways to make up that length the one that costs least in the whole plan");
  }

  /** How hose bought coupled compares with sections made up on the bench. */
  private Optional<String> madeUp() {
    if (topology.legs().size() > 1) {
      return Optional.empty();
    }
    boolean madeUp = topology.hose().finish().madeUp();
    return found.others().stream()
        .filter(plan -> plan.passes() && size(plan) == topology.hose().sizeIn())
        .filter(plan -> plan.assembly().topology().hose().finish().madeUp() != madeUp)
        .findFirst()
        .map(
            plan ->
                plan.total().isLessThan(best.total())
                    ? text(
                        "Hose bought coupled goes before hose made up on the bench (%s), which"
                            + " would come to %s less.",
                        plan.assembly().topology().hose().series(),
                        MoneyWords.of(best.total().minus(plan.total())))
                    : text(
                        madeUp
                            ? madeUpSections()
                                + " made up on the bench from hose by the foot come to %s less than"
                                + " the best bought coupled (%s)."
                            : "Hose bought coupled comes to %s less than the best made up on the"
                                + " bench (%s).",
                        MoneyWords.of(plan.total().minus(best.total())),
                        plan.assembly().topology().hose().series()));
  }

  private String madeUpSections() {
    int madeUp = best.assembly().sections(SectionOption::isMadeUp);
    int all = best.assembly().sections();
    return madeUp == all ? "Sections" : text("%d sections, %d of them", all, madeUp);
  }

  /** Where more is bought than used, because that costs less. */
  private Optional<String> breaks() {
    List<String> more =
        best.purchases().stream()
            .filter(purchase -> purchase.bought() > purchase.needed())
            .map(
                purchase ->
                    text(
                        "%d of %s where %d are used",
                        purchase.bought(), purchase.item().number(), purchase.needed()))
            .toList();
    return more.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Bought to a price break, so that more costs less in all: "
                + String.join("; ", more)
                + ".");
  }
}
