package hosewright.line;

import hosewright.line.Layout.AttackLines;
import hosewright.line.Layout.StationDevice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes down how a line divides and what stands between its sections. */
final class LayoutWriter {
  private final Job job;
  private final Assembly line;

  private LayoutWriter(Job job, Assembly line) {
    this.job = job;
    this.line = line;
  }

  static Layout of(Job job, Assembly line, LineHydraulicsResult hydraulics) {
    LayoutWriter writer = new LayoutWriter(job, line);
    return new Layout(
        line.topology().outlets(),
        line.topology().legs().size() > 1
            ? Optional.of(writer.attackLines(hydraulics))
            : Optional.empty(),
        writer.devices());
  }

  private List<StationDevice> devices() {
    LegShape leg = line.topology().supply();
    double[] endsFt = leg.sectionEndsFt(line.lay());
    List<Integer> couplings = leg.couplings(line.lay());
    List<StationDevice> devices = new ArrayList<>();
    for (int i = 0; i < couplings.size(); i++) {
      LegShape.Midway midway = leg.midway().get(i);
      double atFt = endsFt[couplings.get(i) - 1];
      for (Bridge.Link part : midway.parts()) {
        devices.add(
            new StationDevice(
                part.item().number(), part.item().description(), midway.stationFt(), atFt));
      }
    }
    return devices;
  }

  private AttackLines attackLines(LineHydraulicsResult hydraulics) {
    LegFigures figures = LegFigures.of(job, line).get(1);
    LegShape leg = figures.leg();
    HoseLine hose = leg.hose();
    FrictionChoice friction = FrictionChoice.of(job, hose);
    int wyePlace = wyePlace();
    boolean water = hydraulics.calculated();
    return new AttackLines(
        leg.lines(),
        line.parts().get(wyePlace).itemNumber(),
        wyePlace,
        hose.sizeIn(),
        hose.couplingSizeIn(),
        hose.series(),
        leg.neededFt(),
        figures.lay().lengthFt(),
        PlanWriter.sections(line, 1),
        figures.flowGpm(),
        water ? hydraulics.profile().get(stationsUpTo(wyePlace)).flowingPsi() : 0,
        hose.boreIn(),
        friction.coefficient(),
        friction.basis(),
        water ? figures.frictionLossPsi() : 0,
        water ? figures.velocityFtPerS() : 0,
        figures.waterGal());
  }

  /** The last part of one kind before the parts that stand once in each attack line. */
  private int wyePlace() {
    int place = 0;
    while (line.parts().get(place + 1).lines() == 1) {
      place++;
    }
    return place;
  }

  private int stationsUpTo(int place) {
    return line.parts().subList(1, place + 1).stream().mapToInt(Placed::count).sum();
  }
}
