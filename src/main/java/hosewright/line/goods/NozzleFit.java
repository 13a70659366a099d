package hosewright.line.goods;

import hosewright.catalogue.Item;
import hosewright.catalogue.Sort;
import hosewright.hydraulics.Demand;
import hosewright.job.Job;
import hosewright.job.Limit;
import hosewright.job.question.Use;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Whether a nozzle gives what a line's end is to give. */
final class NozzleFit {
  private final Job job;

  NozzleFit(Job job) {
    this.job = job;
  }

  /** What it gives at the pressure needed, gpm; empty where its row does not tell. */
  OptionalDouble givesGpm(Item nozzle) {
    double needPsi = job.needPsi();
    var rated = nozzle.water();
    if (rated.ratedFlowGpm().isPresent() && rated.ratedPressurePsi().isPresent()) {
      double share = Math.sqrt(needPsi / rated.ratedPressurePsi().getAsDouble());
      return OptionalDouble.of(rated.ratedFlowGpm().getAsDouble() * share);
    }
    if (nozzle.kFactor().isPresent()) {
      return OptionalDouble.of(nozzle.kFactor().getAsDouble() * Math.sqrt(needPsi));
    }
    return nozzle.opening().isPresent()
        ? OptionalDouble.of(new Demand.SmoothBore(nozzle.opening().getAsDouble()).flowGpm(needPsi))
        : OptionalDouble.empty();
  }

  /** How far that is from the flow wanted, as a share of it; empty where it is not known. */
  OptionalDouble away(Item nozzle) {
    OptionalDouble gives = givesGpm(nozzle);
    return gives.isPresent()
        ? OptionalDouble.of(Math.abs(gives.getAsDouble() / job.flowEachGpm() - 1))
        : OptionalDouble.empty();
  }

  /** Whether it gives the flow wanted, through the tip asked for where one is. */
  boolean matches(Item nozzle) {
    boolean sameBore =
        job.tipIn().isEmpty()
            || nozzle.opening().isPresent()
                && Math.abs(nozzle.opening().getAsDouble() - job.tipIn().getAsDouble()) < 0.005;
    return sameBore && away(nozzle).orElse(1) <= Limit.NOZZLE_FLOW_SHARE.value();
  }

  /** Whether a nozzle of a sort is for what the line is for, where only a nozzle was asked for. */
  boolean forUse(Sort sort, boolean shutoffAsked) {
    return switch (sort) {
      case FOG_NOZZLE, SMOOTH_BORE_NOZZLE -> !shutoffAsked;
      case TIP -> shutoffAsked;
      case WASH_DOWN_NOZZLE -> !shutoffAsked && job.service().use() != Use.FIRE;
      default -> true;
    };
  }

  /** What is wrong with a nozzle that was named; empty when nothing is. */
  Optional<String> care(Item nozzle) {
    OptionalDouble gives = givesGpm(nozzle);
    if (gives.isEmpty()) {
      return Optional.of(
          "what %s gives is not known: see that it gives %s".formatted(nozzle.number(), wanted()));
    }
    return matches(nozzle)
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "%s gives %.0f gpm at %.0f psi, and %s is asked for",
                nozzle.number(),
                gives.getAsDouble(),
                job.needPsi(),
                wanted()));
  }

  /** What the line's end is to give, in words. */
  String wanted() {
    return String.format(Locale.ROOT, "%.0f gpm at %.0f psi", job.flowEachGpm(), job.needPsi());
  }
}
