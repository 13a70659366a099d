package hosewright.job;

import hosewright.hydraulics.Supply;
import hosewright.job.question.Answers;
import hosewright.job.question.ApplianceKind;
import hosewright.job.question.Asked;
import hosewright.job.question.Practice;
import hosewright.job.question.SourceKind;
import hosewright.thread.End;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a buyer asks for: this outlet, that appliance, so far apart, so much water.
 *
 * @param conditions the terms the buyer sets besides
 * @param answers what was answered, which cautions may rest on
 */
public record Job(
    Heading heading,
    Ends ends,
    Run run,
    Water water,
    Equipment equipment,
    Conditions conditions,
    Answers answers) {

  public String title() {
    return heading.title();
  }

  public SourceKind source() {
    return ends.source();
  }

  public End from() {
    return ends.from();
  }

  public ApplianceKind appliance() {
    return ends.appliance();
  }

  public End to() {
    return ends.to();
  }

  /** Flow wanted of all appliances together, US gal/min. */
  public double flowGpm() {
    return water.flowGpm();
  }

  /** Gauge pressure each appliance needs at its share of the flow, psi. */
  public double needPsi() {
    return water.needPsi();
  }

  public OptionalDouble tipIn() {
    return water.tipIn();
  }

  public Optional<Supply> supply() {
    return water.supply();
  }

  public Service service() {
    return water.service();
  }

  public Network network() {
    return equipment.network();
  }

  public Wishes wishes() {
    return equipment.wishes();
  }

  public List<String> accessories() {
    return equipment.accessories();
  }

  public Optional<String> customer() {
    return heading.customer();
  }

  public Optional<LocalDate> date() {
    return heading.date();
  }

  public Optional<String> district() {
    return run.district();
  }

  /** Whether the buyer lifts a rule of the trade. */
  public boolean lifts(Practice rule) {
    return conditions.allowed().contains(rule);
  }

  /** Outlets that the line starts from. */
  public int outlets() {
    return network().outlets();
  }

  /** The attack lines, if any are asked for. */
  public Optional<Network.Attack> attack() {
    return network().attack();
  }

  /** Appliances that are fed alike. */
  public int appliances() {
    return attack().map(Network.Attack::lines).orElse(1);
  }

  /** Flow wanted of each appliance, US gal/min. */
  public double flowEachGpm() {
    return flowGpm() / appliances();
  }

  /** Stations that something is asked for at, ft of hose from the source, nearest first. */
  public List<Double> stationsFt() {
    return accessories().stream()
        .flatMapToDouble(wanted -> Asked.of(wanted).stationFt().stream())
        .distinct()
        .sorted()
        .boxed()
        .toList();
  }

  /** This job between other ends. */
  public Job between(Ends other) {
    return new Job(heading, other, run, water, equipment, conditions, answers);
  }

  public Job withWishes(Wishes changed) {
    return new Job(heading, ends, run, water, equipment.withWishes(changed), conditions, answers);
  }

  public Job withConditions(Conditions changed) {
    return new Job(heading, ends, run, water, equipment, changed, answers);
  }

  /** This job with other things wanted besides the line. */
  public Job wanting(List<String> other) {
    return new Job(heading, ends, run, water, equipment.wanting(other), conditions, answers);
  }

  /** This job over another way. */
  public Job along(Run other) {
    return new Job(heading, ends, other, water, equipment, conditions, answers);
  }

  /** This job with its prices of a day, where it names none. */
  public Job on(LocalDate day) {
    return date().isPresent()
        ? this
        : new Job(heading.on(day), ends, run, water, equipment, conditions, answers);
  }

  /** This job with another source, or one that gives what it takes. */
  public Job withSupply(Optional<Supply> other) {
    return new Job(heading, ends, run, water.from(other), equipment, conditions, answers);
  }

  /** This job with another flow and the pressure that goes with it. */
  public Job flowing(double otherFlowGpm, double otherNeedPsi) {
    Water other = water.flowing(otherFlowGpm, otherNeedPsi);
    return new Job(heading, ends, run, other, equipment, conditions, answers);
  }
}
