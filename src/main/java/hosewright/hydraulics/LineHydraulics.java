package hosewright.hydraulics;

import hosewright.hydraulics.law.Given;
import hosewright.hydraulics.law.Physical;
import java.util.List;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The two questions about a line: what pressure a flow needs at the source, and what flow a source
 * brings.
 */
public final class LineHydraulics {
  // A hundred times finer than the 0.01 gpm promised, so that rounding elsewhere stays within it.
  private static final double FLOW_ACCURACY_GPM = 1e-4;
  private static final int MOST_STEPS = 1_000;

  /** A pump that draws its water needs less than the air around it has, and no less than this. */
  private static final double PERFECT_VACUUM_PSI = -14.7;

  private LineHydraulics() {}

  /**
   * The source pressure a flow needs: the appliance's need plus every loss.
   *
   * @param elements source to appliance
   * @param flowGpm over 0 up to {@link Physical#MOST_FLOW_GPM}
   * @param needPsi pressure the appliance needs, psi, 0 to 2,000
   * @throws hosewright.problem.BadInputException when flow or need is out of range
   */
  public static Solution required(List<LineElement> elements, double flowGpm, double needPsi) {
    Given.positive("flow", flowGpm, Physical.MOST_FLOW_GPM, "gpm");
    Given.between("pressure needed", needPsi, PERFECT_VACUUM_PSI, 2_000, "psi");
    Losses losses = losses(elements, flowGpm);
    return new Solution(elements, flowGpm, needPsi, needPsi + losses.totalPsi(), losses);
  }

  /** The source pressure a flow needs through this appliance. */
  public static Solution required(List<LineElement> elements, double flowGpm, Demand demand) {
    refuseTipLargerThanHose(elements, demand);
    Given.positive("flow", flowGpm, Physical.MOST_FLOW_GPM, "gpm");
    Losses losses = losses(elements, flowGpm);
    double needPsi = demand.needPsi(flowGpm);
    return new Solution(elements, flowGpm, needPsi, needPsi + losses.totalPsi(), losses);
  }

  /**
   * The flow a source brings, to 0.01 gpm: where what the source gives just covers the losses and
   * the appliance's need. Where an appliance's stated loss sets in at the very flow sought, the
   * answer stays just below it.
   *
   * @param elements source to appliance
   * @throws hosewright.problem.BadInputException when the tip is larger than the hose before it
   */
  public static Arrival arriving(List<LineElement> elements, Supply supply, Demand demand) {
    refuseTipLargerThanHose(elements, demand);
    if (sparePsi(elements, supply, demand, 0) <= 0) {
      return arrival(Arrival.Limit.NO_FLOW, elements, supply, demand, 0);
    }
    double mostGpm = supply.mostFlowGpm();
    for (LineElement element : elements) {
      if (element instanceof RelayPump pump) {
        mostGpm = Math.min(mostGpm, pump.boost().mostFlowGpm());
      }
    }
    double lowGpm = 0;
    double highGpm = Math.min(100, mostGpm);
    while (sparePsi(elements, supply, demand, highGpm) > 0) {
      if (highGpm >= mostGpm) {
        return arrival(Arrival.Limit.SOURCE, elements, supply, demand, mostGpm);
      }
      lowGpm = highGpm;
      highGpm = Math.min(2 * highGpm, mostGpm);
    }
    double flowGpm =
        new BracketingNthOrderBrentSolver(1e-14, FLOW_ACCURACY_GPM, 1e-10, 5)
            .solve(
                MOST_STEPS,
                flow -> sparePsi(elements, supply, demand, flow),
                lowGpm,
                highGpm,
                AllowedSolution.LEFT_SIDE);
    return arrival(Arrival.Limit.PRESSURE, elements, supply, demand, flowGpm);
  }

  /** What the line takes at a flow of 0 or more, by kind. */
  public static Losses losses(List<LineElement> elements, double flowGpm) {
    double friction = 0;
    double elevation = 0;
    double fitting = 0;
    double appliance = 0;
    double boost = 0;
    for (LineElement element : elements) {
      double psi = element.lossPsi(flowGpm);
      elevation += element.riseFt() * Physical.PSI_PER_FT;
      switch (element.kind(flowGpm)) {
        case FRICTION -> friction += psi;
        case FITTING -> fitting += psi;
        case APPLIANCE -> appliance += psi;
        case PUMP -> boost -= psi;
      }
    }
    return new Losses(friction, elevation, fitting, appliance, boost);
  }

  /** Source pressure less pressure at the appliance, psi: the total of {@link #losses}, faster. */
  public static double lossPsi(List<LineElement> elements, double flowGpm) {
    double psi = 0;
    for (LineElement element : elements) {
      psi += element.lossPsi(flowGpm) + element.riseFt() * Physical.PSI_PER_FT;
    }
    return psi;
  }

  /**
   * Pressure at the source and at the end of every section and part, and within a section wherever
   * ground or pressure stops rising or falling.
   *
   * @param sourcePsi pressure at the source with the flow, psi
   * @param closedSourcePsi pressure at the source with the nozzle shut, psi
   */
  public static List<Station> profile(
      List<LineElement> elements, double flowGpm, double sourcePsi, double closedSourcePsi) {
    Given.pressure("source pressure", sourcePsi);
    Given.pressure("source pressure with the nozzle shut", closedSourcePsi);
    Profile profile = new Profile(sourcePsi, closedSourcePsi);
    elements.forEach(element -> profile.add(element, flowGpm));
    return profile.stations();
  }

  private static double sparePsi(
      List<LineElement> elements, Supply supply, Demand demand, double flowGpm) {
    return supply.pressurePsi(flowGpm) - lossPsi(elements, flowGpm) - demand.needPsi(flowGpm);
  }

  private static Arrival arrival(
      Arrival.Limit limit,
      List<LineElement> elements,
      Supply supply,
      Demand demand,
      double flowGpm) {
    Losses losses = losses(elements, flowGpm);
    double sourcePsi = supply.pressurePsi(flowGpm);
    return new Arrival(
        limit,
        flowGpm,
        new Arrival.Pressures(sourcePsi - losses.totalPsi(), demand.needPsi(flowGpm), sourcePsi),
        losses,
        elements,
        supply);
  }

  /** Refuses a tip that no hose before it could take. */
  public static void refuseTipLargerThanHose(List<LineElement> elements, Demand demand) {
    if (demand instanceof Demand.Alike alike) {
      refuseTipLargerThanHose(elements, alike.one());
    }
    if (!(demand instanceof Demand.SmoothBore tip)) {
      return;
    }
    for (int i = elements.size() - 1; i >= 0; i--) {
      if (elements.get(i) instanceof HoseLeg leg) {
        if (tip.tipIn() > leg.boreIn()) {
          throw Given.refused(
              "tip",
              tip.tipIn(),
              "in",
              "a tip is no larger than the hose before it, here "
                  + Given.plain(leg.boreIn())
                  + " in");
        }
        return;
      }
    }
  }
}
