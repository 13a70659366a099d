package hosewright.line.explain;

import static hosewright.line.check.Checks.text;

import hosewright.catalogue.MoneyWords;
import hosewright.job.Job;
import hosewright.line.model.Check;
import hosewright.line.model.CheckId;
import hosewright.line.search.Evaluated;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/** Why a plan lost against the best one, as one would tell the buyer. */
final class WhyLost {
  /** Less than this is no difference to a buyer. */
  private static final double NOTICED_PSI = 1;

  private static final double NOTICED_SHARE = 0.05;

  /** Items named when two plans are set against each other. */
  private static final int MOST_NAMED = 4;

  private final Job job;
  private final Evaluated best;

  WhyLost(Job job, Evaluated best) {
    this.job = job;
    this.best = best;
  }

  /** The first check a plan fails. */
  static Optional<Check> failed(Evaluated plan) {
    return plan.checks().stream()
        .filter(check -> check.outcome() == Check.Outcome.FAIL)
        .findFirst();
  }

  /** Why another hose lost. */
  String otherHose(Evaluated plan) {
    Optional<Check> failed = failed(plan);
    if (failed.isPresent()) {
      return fails(plan, failed.get());
    }
    if (plan.partsToSource() > best.partsToSource()) {
      return plan.assembly().hasPartToSource()
          ? "no adapter in the catalogue joins it to both ends: one would have to be sourced"
          : "not all that is asked for goes with it: a part would have to be sourced";
    }
    if (plan.ranksLast() && !best.ranksLast()) {
      return laidLast(plan);
    }
    return dearer(plan) + inReturn(plan);
  }

  /** A rule ranks it last, whatever it costs. */
  private String laidLast(Evaluated plan) {
    var less = best.total().minus(plan.total());
    return plan.whyLast().orElseThrow()
        + (less.isPositive() ? ", though for " + MoneyWords.of(less) + " less" : "");
  }

  /** Why the next cheapest plan lost, and what it would buy instead. */
  String runnerUp(Evaluated plan) {
    if (plan.ranksLast() && !best.ranksLast()) {
      return laidLast(plan) + "; " + otherGoods(plan);
    }
    boolean dearer = plan.total().isGreaterThan(best.total());
    return dearer(plan) + (dearer ? inReturn(plan) : "") + "; " + otherGoods(plan);
  }

  private String fails(Evaluated plan, Check failed) {
    double hosePsi = plan.hydraulics().frictionLossPsi();
    double mayLosePsi = mayLosePsi(plan);
    if (failed.id() == CheckId.DELIVERED_PRESSURE && hosePsi > mayLosePsi) {
      return text(
          "the hose alone takes %.0f psi at %.0f gpm, and %s",
          hosePsi,
          job.flowGpm(),
          mayLosePsi > 0
              ? text("only %.0f psi may be lost on the way", mayLosePsi)
              : "the source has nothing to spare");
    }
    return failed.name() + ": " + failed.note();
  }

  /** What friction and fittings may take of a stated source, psi. */
  private double mayLosePsi(Evaluated plan) {
    return plan.hydraulics().sourcePsi().orElse(Double.POSITIVE_INFINITY)
        - job.needPsi()
        - plan.hydraulics().elevationLossPsi();
  }

  private String dearer(Evaluated plan) {
    var more = plan.total().minus(best.total());
    if (more.isZero()) {
      return "costs the same, and of equals the one with fewer sections, then with fewer adapters,"
          + " then with the lower loss is offered";
    }
    String share = best.total().isZero() ? "" : share(more);
    return "costs " + MoneyWords.of(more) + " more" + share;
  }

  private String share(Money more) {
    BigDecimal percent =
        more.getAmount()
            .multiply(BigDecimal.valueOf(100))
            .divide(best.total().getAmount(), 0, RoundingMode.HALF_UP);
    return percent.signum() == 0 ? "" : " (" + percent.toPlainString() + " %)";
  }

  /** What the money would buy, or that it buys nothing. */
  private String inReturn(Evaluated plan) {
    List<String> better = new ArrayList<>();
    List<String> worse = new ArrayList<>();
    double lessPsi = best.hydraulics().requiredSourcePsi() - plan.hydraulics().requiredSourcePsi();
    if (Math.abs(lessPsi) >= NOTICED_PSI) {
      (lessPsi > 0 ? better : worse)
          .add(text("takes %.0f psi %s at the source", Math.abs(lessPsi), moreOrLess(-lessPsi)));
    }
    double lighterLb = best.hydraulics().chargedWeightLb() - plan.hydraulics().chargedWeightLb();
    if (Math.abs(lighterLb) > NOTICED_SHARE * best.hydraulics().chargedWeightLb()) {
      (lighterLb > 0 ? better : worse)
          .add(text("weighs %.0f lb %s full", Math.abs(lighterLb), moreOrLess(-lighterLb)));
    }
    int fewer = sections(best) - sections(plan);
    if (fewer != 0) {
      (fewer > 0 ? better : worse)
          .add(
              text(
                  "has %d %s %s",
                  Math.abs(fewer),
                  Math.abs(fewer) == 1 ? "section" : "sections",
                  fewer > 0 ? "fewer" : "more"));
    }
    if (better.isEmpty()) {
      return worse.isEmpty() ? " and does no more" : " and " + String.join(", ", worse);
    }
    return " though it "
        + String.join(", ", better)
        + (worse.isEmpty() ? "" : "; it " + String.join(", ", worse));
  }

  private static int sections(Evaluated plan) {
    return plan.assembly().sections();
  }

  private static String moreOrLess(double difference) {
    return difference > 0 ? "more" : "less";
  }

  private String otherGoods(Evaluated plan) {
    Map<String, Integer> ours = best.bought();
    Map<String, Integer> theirs = plan.bought();
    List<String> instead = differing(theirs, ours);
    List<String> of = differing(ours, theirs);
    String buys = instead.isEmpty() ? "nothing" : String.join(", ", instead);
    return "it buys " + buys + (of.isEmpty() ? " besides" : " instead of " + String.join(", ", of));
  }

  /** What one buys more of than the other. */
  private static List<String> differing(Map<String, Integer> one, Map<String, Integer> other) {
    List<String> more = new ArrayList<>();
    one.forEach(
        (number, quantity) -> {
          int beyond = quantity - other.getOrDefault(number, 0);
          if (beyond > 0) {
            more.add(beyond + " x " + number);
          }
        });
    if (more.size() <= MOST_NAMED) {
      return more;
    }
    List<String> told = new ArrayList<>(more.subList(0, MOST_NAMED - 1));
    told.add((more.size() - told.size()) + " other items");
    return told;
  }
}
