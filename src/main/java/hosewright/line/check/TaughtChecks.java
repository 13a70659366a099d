package hosewright.line.check;

import static hosewright.line.check.Checks.check;
import static hosewright.line.check.Checks.text;

import hosewright.catalogue.Item;
import hosewright.hydraulics.law.FrictionTable;
import hosewright.hydraulics.law.Given;
import hosewright.job.Job;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Placed;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import hosewright.line.model.Hydraulics;
import hosewright.line.water.ApplianceTeaching;
import hosewright.line.water.FittingLoss;
import hosewright.line.water.FrictionChoice;
import hosewright.line.water.LegFigures;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Whether a plan holds under what others teach of the same hose and appliances. It only ever warns:
 * the plan is reckoned with one figure, and these say what becomes of it with another.
 */
public final class TaughtChecks {
  private final Job job;
  private final Assembly line;
  private final Hydraulics hydraulics;

  private TaughtChecks(Job job, Assembly line, Hydraulics hydraulics) {
    this.job = job;
    this.line = line;
    this.hydraulics = hydraulics;
  }

  /** The checks for a plan; none where nothing is calculated or nobody teaches otherwise. */
  public static List<Check> of(Job job, Assembly line, Hydraulics hydraulics) {
    List<Check> checks = new ArrayList<>();
    if (hydraulics.calculated()) {
      TaughtChecks taught = new TaughtChecks(job, line, hydraulics);
      taught.coefficients().ifPresent(checks::add);
      taught.appliances().ifPresent(checks::add);
    }
    return checks;
  }

  /** Every coefficient taught for a hose is tried, the worst and the best of each leg together. */
  private Optional<Check> coefficients() {
    Set<String> tried = new LinkedHashSet<>();
    Set<String> sources = new LinkedHashSet<>();
    double worsePsi = 0;
    double betterPsi = 0;
    for (LegFigures leg : LegFigures.of(job, line)) {
      List<FrictionTable.Row> others = FrictionChoice.others(job, leg.leg().hose());
      if (others.isEmpty()) {
        continue;
      }
      FrictionChoice.of(job, leg.leg().hose())
          .coefficient()
          .ifPresent(c -> tried.add(Given.plain(c)));
      double mostPsi = 0;
      double leastPsi = 0;
      for (FrictionTable.Row row : others) {
        tried.add(Given.plain(row.c()));
        sources.add(row.source());
        double morePsi =
            row.law().lossPsi(leg.flowGpm(), leg.lay().lengthFt()) - leg.frictionLossPsi();
        mostPsi = Math.max(mostPsi, morePsi);
        leastPsi = Math.min(leastPsi, morePsi);
      }
      worsePsi += mostPsi;
      betterPsi += leastPsi;
    }
    if (tried.isEmpty()) {
      return Optional.empty();
    }
    double worstPsi = hydraulics.requiredSourcePsi() + worsePsi;
    double bestPsi = hydraulics.requiredSourcePsi() + betterPsi;
    String all = String.join(" and ", tried);
    String note =
        holds(worstPsi)
            ? text(
                "holds under every coefficient taught for the hose, C = %s: %s",
                all, takes(worstPsi))
            : holds(bestPsi)
                ? text(
                    "holds under some of the coefficients taught for the hose, C = %s, and not"
                        + " under all: at the worst %s; measure what this hose loses",
                    all, takes(worstPsi))
                : text("holds under none of the coefficients taught for the hose, C = %s", all);
    return Optional.of(
        judged(CheckId.FRICTION_COEFFICIENTS, worstPsi, note, String.join("; ", sources)));
  }

  /** What forestry counts for each appliance at any flow, beside what the plan counts. */
  private Optional<Check> appliances() {
    double morePsi = 0;
    Set<String> sources = new LinkedHashSet<>();
    for (Placed part : line.parts()) {
      Optional<ApplianceTeaching.Row> row =
          part.item().map(Item::kind).flatMap(kind -> ApplianceTeaching.beside(kind.word()));
      if (part.role().isFitting() && row.isPresent()) {
        double countedPsi = FittingLoss.of(part).lossPsi(job.flowGpm());
        if (row.get().psi() > countedPsi) {
          morePsi += row.get().psi() - countedPsi;
          sources.add(row.get().source());
        }
      }
    }
    if (sources.isEmpty()) {
      return Optional.empty();
    }
    double worstPsi = hydraulics.requiredSourcePsi() + morePsi;
    String note =
        text(
            "with what is taught elsewhere for wyes and siameses %.1f psi more would be lost; %s%s",
            morePsi,
            holds(worstPsi) ? "it holds all the same: " : "it would not hold: ",
            takes(worstPsi));
    return Optional.of(judged(CheckId.APPLIANCE_LOSS, worstPsi, note, String.join("; ", sources)));
  }

  private Check judged(CheckId id, double worstPsi, String note, String source) {
    return check(
        id,
        holds(worstPsi) ? Outcome.PASS : Outcome.WARN,
        worstPsi,
        limitPsi().orElse(worstPsi),
        "psi",
        note,
        source);
  }

  private boolean holds(double requiredPsi) {
    return requiredPsi <= limitPsi().orElse(requiredPsi) + PressureChecks.HAIR_PSI;
  }

  /** What the source gives; where none is stated, what the hose may carry. */
  private OptionalDouble limitPsi() {
    return hydraulics.sourcePsi().isPresent()
        ? OptionalDouble.of(hydraulics.sourcePsi().get())
        : line.hoseWorkingPsi(job.service().temperatureOrUsualF());
  }

  private String takes(double psi) {
    return hydraulics.sourcePsi().isPresent()
        ? text("it takes %.1f psi, and the source gives %.1f", psi, hydraulics.sourcePsi().get())
        : text("the source must then hold %.1f psi", psi);
  }
}
