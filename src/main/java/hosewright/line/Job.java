package hosewright.line;

import hosewright.hydraulics.Supply;
import hosewright.thread.End;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a buyer asks for: this outlet, that appliance, so far apart, so much water.
 *
 * @param title a short name for papers
 * @param from the end of the source
 * @param to the end of the appliance
 * @param flowGpm flow wanted, US gal/min
 * @param needPsi gauge pressure the appliance needs at that flow, psi
 * @param supply what the source gives; empty when only the need is asked
 * @param conditions the terms the buyer sets besides
 * @param accessories item numbers or kinds asked for besides the line
 * @param customer whose terms price the plan; empty for list prices
 * @param date the day prices are taken of; empty for today
 * @param district where the line is laid, as the dealer's register of local threads names it
 */
public record Job(
    String title,
    SourceKind source,
    End from,
    ApplianceKind appliance,
    End to,
    Run run,
    double flowGpm,
    double needPsi,
    OptionalDouble tipIn,
    Optional<Supply> supply,
    Wishes wishes,
    Conditions conditions,
    Service service,
    List<String> accessories,
    Optional<String> customer,
    Optional<LocalDate> date,
    Optional<String> district) {

  /** Slack laid over the run length when nothing else is said: common practice, no source. */
  public static final double USUAL_SLACK = 0.05;

  /**
   * Where the line runs.
   *
   * @param lengthFt distance along the ground, ft
   * @param riseFt height of the appliance above the source, ft; negative downhill
   * @param slack extra hose as a share of the length, 0 or more
   * @param suction how the pump at its start draws water; empty where it draws none
   */
  public record Run(double lengthFt, double riseFt, double slack, Optional<Suction> suction) {

    /** Hose to lay, ft. */
    public double neededFt() {
      return lengthFt * (1 + slack);
    }
  }

  /**
   * A pump that draws its water from below.
   *
   * @param liftFt height of the pump above the water, ft
   * @param altitudeFt height of the place above the sea, ft
   */
  public record Suction(double liftFt, double altitudeFt) {}

  /**
   * What the buyer insists on; empty leaves the choice to the plan.
   *
   * @param hoseSizesIn nominal hose sizes allowed, in; empty for any
   * @param couplingSizeIn nominal size of the hose's couplings, in
   * @param hoseThread family code of the hose's couplings
   * @param sectionFt the only section length allowed, ft
   * @param lines parallel lines
   * @param frictionCoefficient C to calculate with instead of the catalogue's
   */
  public record Wishes(
      List<Double> hoseSizesIn,
      OptionalDouble couplingSizeIn,
      Optional<String> hoseThread,
      OptionalDouble sectionFt,
      OptionalInt lines,
      OptionalDouble frictionCoefficient) {

    public Wishes {
      hoseSizesIn = List.copyOf(hoseSizesIn);
    }

    static final Wishes NONE =
        new Wishes(
            List.of(),
            OptionalDouble.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalInt.empty(),
            OptionalDouble.empty());

    boolean allows(double sizeIn) {
      return hoseSizesIn.isEmpty() || hoseSizesIn.contains(sizeIn);
    }

    int fewestLines() {
      return lines.orElse(1);
    }

    int mostLines() {
      return lines.orElse(hoseSizesIn.size() == 1 ? 1 : Planner.MOST_LINES);
    }

    Wishes withAnySize() {
      return new Wishes(
          List.of(), OptionalDouble.empty(), hoseThread, sectionFt, lines, OptionalDouble.empty());
    }

    Wishes withLines(int count) {
      return new Wishes(
          hoseSizesIn,
          couplingSizeIn,
          hoseThread,
          sectionFt,
          OptionalInt.of(count),
          frictionCoefficient);
    }
  }

  /**
   * What flows, and for what.
   *
   * @param fluid "water" or what else the parts must be marked for
   * @param temperatureF °F; empty when not stated
   */
  public record Service(Use use, String fluid, OptionalDouble temperatureF) {

    /** The temperature to take ratings and viscosity at, °F. */
    double temperatureOrUsualF() {
      return temperatureF.orElse(Limit.WATER_TEMPERATURE_F.value());
    }

    boolean isWater() {
      return fluid.equals("water");
    }
  }

  Job withWishes(Wishes changed) {
    return with(flowGpm, needPsi, changed, conditions, date);
  }

  Job withConditions(Conditions changed) {
    return with(flowGpm, needPsi, wishes, changed, date);
  }

  /** The same job with its prices of a day, where it names none. */
  Job on(LocalDate day) {
    return date.isPresent() ? this : with(flowGpm, needPsi, wishes, conditions, Optional.of(day));
  }

  /** The same line with another flow and the pressure that goes with it. */
  Job flowing(double otherFlowGpm, double otherNeedPsi) {
    return with(otherFlowGpm, otherNeedPsi, wishes, conditions, date);
  }

  private Job with(
      double otherFlowGpm,
      double otherNeedPsi,
      Wishes wished,
      Conditions set,
      Optional<LocalDate> day) {
    return new Job(
        title,
        source,
        from,
        appliance,
        to,
        run,
        otherFlowGpm,
        otherNeedPsi,
        tipIn,
        supply,
        wished,
        set,
        service,
        accessories,
        customer,
        day,
        district);
  }
}
