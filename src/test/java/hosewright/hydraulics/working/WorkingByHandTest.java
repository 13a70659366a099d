package hosewright.hydraulics.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.hydraulics.ApplianceLoss;
import hosewright.hydraulics.Demand;
import hosewright.hydraulics.Fitting;
import hosewright.hydraulics.FixedPressure;
import hosewright.hydraulics.HoseLeg;
import hosewright.hydraulics.Hydrant;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.LineHydraulics;
import hosewright.hydraulics.ParallelLegs;
import hosewright.hydraulics.PumpCurve;
import hosewright.hydraulics.RelayPump;
import hosewright.hydraulics.Supply;
import hosewright.hydraulics.TaughtLoss;
import hosewright.hydraulics.law.CoefficientLaw;
import hosewright.hydraulics.law.DarcyWeisbach;
import hosewright.hydraulics.law.FrictionLaw;
import hosewright.hydraulics.law.HazenWilliams;
import hosewright.hydraulics.working.Working.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** The numbers of the working, keyed into a spreadsheet's formula engine as they are printed. */
class WorkingByHandTest {
  private static final int LINES = 150;

  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final Cell cell = workbook.createSheet().createRow(0).createCell(0);
  private final FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();

  private double keyedIn(Step step) {
    String numbers =
        step.numbers()
            .replaceFirst(", with Re .*", "")
            .replaceFirst(" at any flow", "")
            .replaceFirst("^([0-9.]+) (from|of) .* gpm( on)?, at .* gpm", "$1")
            .replaceFirst("-\\((.*) at .*gpm\\)", "-$1")
            .replace(" x ", "*")
            .replace("x -", "*-");
    cell.setCellFormula(numbers);
    evaluator.clearAllCachedResultValues();
    return evaluator.evaluate(cell).getNumberValue();
  }

  private void holds(String seed, Step step) {
    // Flows and lengths are printed to a hundredth, and velocities enter squared.
    double tolerance = 0.006 + 0.003 * Math.abs(step.result());
    assertThat(keyedIn(step))
        .as("%s: %s", seed, step.sentence())
        .isCloseTo(step.result(), within(tolerance));
  }

  @Test
  void every_step_of_random_lines_comes_out_as_its_numbers_do() {
    for (long seed = 1; seed <= LINES; seed++) {
      Random random = new Random(seed);
      List<LineElement> line = line(random);
      Demand demand = demand(random);
      Supply supply = supply(random);
      List<Step> steps = new ArrayList<>();
      double flowGpm = 20 + random.nextInt(400);
      steps.addAll(Working.of(LineHydraulics.required(line, flowGpm, random.nextInt(100))));
      steps.addAll(Working.of(LineHydraulics.arriving(line, supply, demand), demand));
      steps.add(WorkedFigures.velocity(flowGpm, 2.5));
      steps.add(WorkedFigures.volume(1.75, 450));
      steps.add(WorkedFigures.chargedWeight(191.25, 56.23));
      steps.add(WorkedFigures.fill(56.23, flowGpm));
      steps.add(WorkedFigures.surge(12.5, 4593));
      steps.add(WorkedFigures.solidReaction(1.125, 50));
      steps.add(WorkedFigures.fogReaction(flowGpm, 75));
      for (Step step : steps) {
        holds("seed " + seed, step);
      }
    }
  }

  private static List<LineElement> line(Random random) {
    double lengthFt = 50 * (1 + random.nextInt(8));
    double riseFt = random.nextInt(3) == 0 ? random.nextInt(40) - 20 : 0;
    FrictionLaw law =
        switch (random.nextInt(3)) {
          case 0 -> new CoefficientLaw(2);
          case 1 -> new HazenWilliams(120 + random.nextInt(30), 2.5);
          default -> new DarcyWeisbach(0.0018, 2.5, 60.0);
        };
    List<LineElement> line = new ArrayList<>();
    line.add(new HoseLeg("hose", law, lengthFt, riseFt, 2.5, 1 + random.nextInt(2), 1));
    line.add(new Fitting("reducer", 0.32, 1.5));
    // Below 350 gpm the waterway decides; from there on one or the other, by its coefficient.
    Fitting siamese = new Fitting("siamese", 0.2 + 0.1 * random.nextInt(5), 1.5);
    line.add(new TaughtLoss(siamese, new ApplianceLoss("siamese", 350, 10)));
    if (random.nextBoolean()) {
      line.add(new RelayPump("pump", new FixedPressure(30)));
    }
    return line;
  }

  private static Supply supply(Random random) {
    return switch (random.nextInt(3)) {
      case 0 -> new FixedPressure(100 + random.nextInt(100));
      case 1 -> new Hydrant(90, 60, 700 + random.nextInt(500), random.nextInt(8));
      default ->
          new PumpCurve(
              List.of(
                  new PumpCurve.Point(0, 190),
                  new PumpCurve.Point(300, 150),
                  new PumpCurve.Point(900, 60)));
    };
  }

  private static Demand demand(Random random) {
    return switch (random.nextInt(6)) {
      case 0 -> new Demand.FlowAndPressure(150, 50);
      case 1 -> new Demand.KFactor(21.2);
      case 2 -> new Demand.SmoothBore(0.875);
      case 3 -> new Demand.FixedGallonage(125, 75);
      case 4 -> new Demand.AutomaticFog(60, 200, 75);
      default -> new Demand.OpenEnd(2.5, 10);
    };
  }

  @Test
  void unequal_lines_side_by_side_show_the_loss_of_each() {
    ParallelLegs pair =
        new ParallelLegs(
            "pair",
            List.of(
                new HoseLeg("left", new CoefficientLaw(2), 300, 2.5),
                new HoseLeg("right", new CoefficientLaw(0.8), 400, 3)));
    Step step = Working.of(LineHydraulics.required(List.of(pair), 500, 50)).get(0);
    for (String line : step.numbers().split("; ", -1)) {
      String numbers = line.substring(line.indexOf(": ") + 2);
      Step alone = new Step(line, "", numbers, step.result(), "psi", "");
      holds("one of the pair", alone);
    }
    assertThat(step.numbers()).contains("left with").contains("right with");
  }
}
