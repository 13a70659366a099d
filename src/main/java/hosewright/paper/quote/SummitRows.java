package hosewright.paper.quote;

import hosewright.line.model.Check;
import hosewright.line.model.CheckId;
import hosewright.line.model.Hydraulics.Station;
import hosewright.line.model.LinePlan;
import hosewright.paper.sheet.FormulaRows;
import java.util.Comparator;
import java.util.Optional;

/** What a source must hold to carry the water over the summit of a way, live beside its inputs. */
final class SummitRows {
  static final String REQUIRED = "summit_required_psi";

  private final FormulaRows rows;
  private final LinePlan plan;

  SummitRows(FormulaRows rows, LinePlan plan) {
    this.rows = rows;
    this.plan = plan;
  }

  /** The summit written down; nothing where the way has none. */
  Optional<Station> write() {
    Optional<Station> lowest =
        plan.hydraulics().summits().stream().min(Comparator.comparingDouble(Station::flowingPsi));
    Optional<Check> kept =
        plan.checks().stream().filter(check -> check.id() == CheckId.SUMMIT_PRESSURE).findFirst();
    if (lowest.isEmpty() || kept.isEmpty()) {
      return Optional.empty();
    }
    Station summit = lowest.get();
    rows.input("Summit: height over the source", summit.elevationFt(), "ft", "summit_ft", "");
    rows.input("Summit: hose laid up to it", summit.distanceFt(), "ft", "summit_laid_ft", "");
    rows.input(
        "Summit: pressure kept", kept.get().limit(), "psi", "summit_keep_psi", kept.get().source());
    rows.fixed(
        "Summit: fitting loss before it, as planned",
        ProfileTable.fittingsPsi(plan, summit),
        "psi",
        "summit_fittings_psi",
        "");
    rows.formula(
        "Required to carry the water over the summit",
        "summit_keep_psi+summit_ft*psi_per_ft+"
            + ProfileTable.frictionUpTo(plan, "summit_laid_ft", "+")
            + "+summit_fittings_psi*"
            + ProfileTable.fittingsNow(plan),
        "psi",
        REQUIRED,
        "kept there, the height and every loss before it");
    return lowest;
  }
}
