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
 * @param flowGpm flow wanted of all appliances together, US gal/min
 * @param needPsi gauge pressure each appliance needs at its share of that flow, psi
 * @param supply what the source gives; empty when only the need is asked
 * @param network where the line starts from several outlets, or feeds several appliances
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
    Network network,
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
   * How a line is more than one source and one appliance.
   *
   * @param outlets like outlets of the source that a line starts from each, to be joined by a
   *     siamese at the appliance; 1 where one line starts from one
   * @param attack lines of their own behind a wye at the end of the run
   */
  public record Network(int outlets, Optional<Attack> attack) {
    static final Network ONE_LINE = new Network(1, Optional.empty());
  }

  /**
   * Like lines that start at a wye, each with an appliance of its own.
   *
   * @param lines how many, 2 or more
   * @param lengthFt distance of each from the wye along the ground, ft
   * @param hoseSizesIn nominal hose sizes allowed, in; empty for any
   */
  public record Attack(int lines, double lengthFt, List<Double> hoseSizesIn) {
    public Attack {
      hoseSizesIn = List.copyOf(hoseSizesIn);
    }

    /** Hose to lay in one of them, ft. */
    double neededFt(double slack) {
      return lengthFt * (1 + slack);
    }
  }

  /** Outlets that the line starts from. */
  int outlets() {
    return network.outlets();
  }

  /** The attack lines, if any are asked for. */
  public Optional<Attack> attack() {
    return network.attack();
  }

  /** Appliances that are fed alike. */
  public int appliances() {
    return attack().map(Attack::lines).orElse(1);
  }

  /** Flow wanted of each appliance, US gal/min. */
  public double flowEachGpm() {
    return flowGpm / appliances();
  }

  /** Stations that something is asked for at, ft of hose from the source, nearest first. */
  List<Double> stationsFt() {
    return accessories.stream()
        .flatMapToDouble(wanted -> Asked.of(wanted).stationFt().stream())
        .distinct()
        .sorted()
        .boxed()
        .toList();
  }

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

    /** What holds for attack lines: of sizes of their own, else as for the whole job. */
    Wishes ofSizes(List<Double> sizesIn) {
      return new Wishes(
          sizesIn,
          OptionalDouble.empty(),
          hoseThread,
          sectionFt,
          OptionalInt.empty(),
          OptionalDouble.empty());
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

  /** This job with its prices of a day, where it names none. */
  Job on(LocalDate day) {
    return date.isPresent() ? this : with(flowGpm, needPsi, wishes, conditions, Optional.of(day));
  }

  /** This job with another flow and the pressure that goes with it. */
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
        network,
        wished,
        set,
        service,
        accessories,
        customer,
        day,
        district);
  }
}
