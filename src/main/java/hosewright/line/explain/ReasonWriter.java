package hosewright.line.explain;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.ItemKind;
import hosewright.job.Job;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.SectionOption;
import hosewright.line.model.Check;
import hosewright.line.model.Reasoning;
import hosewright.line.model.Reasoning.Considered;
import hosewright.line.model.Reasoning.Count;
import hosewright.line.model.Reasoning.Rival;
import hosewright.line.search.Evaluated;
import hosewright.line.search.PlanRank;
import hosewright.line.search.SearchResult;
import hosewright.line.search.SearchTally;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes down why the best plan of a search won and every other lost. */
public final class ReasonWriter {
  private ReasonWriter() {}

  /**
   * @param found the two best plans of every make of hose
   * @param leftOut hose items that were not weighed at all, by the reason
   */
  public static Reasoning of(
      Job job, Catalogue catalogue, SearchResult found, Map<String, Integer> leftOut) {
    Considered considered = considered(catalogue, found, leftOut);
    if (found.best().isEmpty()) {
      return new Reasoning(List.of(), considered, Optional.empty(), List.of());
    }
    Evaluated best = found.best().get();
    WhyLost lost = new WhyLost(job, best);
    return new Reasoning(
        best.passes() ? new WhyWon(job, best, found).sentences() : List.of(),
        considered,
        runnerUp(best, found).map(plan -> rival(plan, best, lost.runnerUp(plan))),
        found.others().stream().map(plan -> rival(plan, best, lost.otherHose(plan))).toList());
  }

  /** The next plan of every make stands second in its group, so none that is better is missed. */
  private static Optional<Evaluated> runnerUp(Evaluated best, SearchResult found) {
    return found.groups().stream()
        .flatMap(List::stream)
        .filter(plan -> plan != best && plan.passes() && best.passes())
        .filter(plan -> !plan.buysTheSame(best))
        .filter(plan -> plan.partsToSource() <= best.partsToSource())
        .min(PlanRank.BEST_FIRST);
  }

  private static Considered considered(
      Catalogue catalogue, SearchResult found, Map<String, Integer> leftOut) {
    SearchTally tally = found.tally();
    int hoses =
        catalogue.ofKind(ItemKind.HOSE).size() + catalogue.ofKind(ItemKind.BULK_HOSE).size();
    return new Considered(
        new Considered.Stock(hoses, counts(leftOut), found.groups().size()),
        new Considered.Ways(
            tally.topologies, tally.unjoined, tally.cutByPrice, tally.cutByPressure),
        new Considered.Plans(tally.plans, tally.dearer, counts(tally.failed), tally.passed));
  }

  private static List<Count> counts(Map<String, Integer> counts) {
    return counts.entrySet().stream()
        .map(entry -> new Count(entry.getKey(), entry.getValue()))
        .toList();
  }

  private static Rival rival(Evaluated plan, Evaluated best, String why) {
    HoseLine hose = plan.assembly().topology().hose();
    int lines = plan.assembly().topology().lines();
    return new Rival(
        new Rival.Laid(
            hose.sizeIn(),
            hose.series(),
            hose.couplings(),
            lines,
            plan.assembly().sections(),
            plan.assembly().sections(SectionOption::isMadeUp)),
        WhyLost.failed(plan).map(Check::name),
        plan.total(),
        plan.total().minus(best.total()),
        plan.hydraulics().requiredSourcePsi(),
        plan.hydraulics().chargedWeightLb(),
        why);
  }
}
