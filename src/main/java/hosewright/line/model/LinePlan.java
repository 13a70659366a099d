package hosewright.line.model;

import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * Everything technical about a job, and its goods priced: the answer a planner gives. A stored
 * quote keeps it whole, so that its papers never change when the catalogue does.
 *
 * @param layout the parts in their places
 * @param hydraulics how pressure goes along the line
 * @param checks each check with its value, limit and source
 * @param bill what is bought
 * @param weighed what else was looked at
 */
public record LinePlan(
    Asked asked,
    Answer answer,
    Layout layout,
    Hydraulics hydraulics,
    List<Check> checks,
    Bill bill,
    Weighed weighed) {

  public LinePlan {
    checks = List.copyOf(checks);
  }

  /**
   * What was asked for.
   *
   * @param summary the job in one sentence of plain words
   * @param flowGpm flow asked for of all appliances together, gpm
   * @param needPsi pressure the appliance, or each of them, needs, psi
   * @param allowed ids of the rules of the trade that the buyer lifted
   * @param ofLegs what is asked where legs end at appliances of their own; empty where one is fed,
   *     or like ones
   */
  public record Asked(
      String summary, double flowGpm, double needPsi, List<String> allowed, List<OfLeg> ofLegs) {
    public Asked {
      // Plans kept before there were such rules and legs say nothing of them.
      allowed = allowed == null ? List.of() : List.copyOf(allowed);
      ofLegs = ofLegs == null ? List.of() : List.copyOf(ofLegs);
    }

    /** What is asked at the end of a leg, where it is told apart from others. */
    public Optional<OfLeg> of(Leg leg) {
      return ofLegs.stream().filter(one -> one.leg().equals(leg.name())).findFirst();
    }

    /** Of one appliance, or of like ones. */
    public Asked(String summary, double flowGpm, double needPsi, List<String> allowed) {
      this(summary, flowGpm, needPsi, allowed, List.of());
    }
  }

  /**
   * What is asked at the end of a leg, of each of its copies.
   *
   * @param leg its name
   * @param flowGpm flow wanted, gpm
   * @param needPsi pressure needed, psi
   * @param reactionLbf nozzle reaction at that flow, lbf, where the appliance is a nozzle
   */
  public record OfLeg(String leg, double flowGpm, double needPsi, Optional<Double> reactionLbf) {}

  /**
   * Whether it can be done.
   *
   * @param feasible every check passed or only warned
   * @param limitedBy the check that fails and by how much, in one sentence
   * @param instead what would do: a size, a source pressure, more lines
   * @param cautions sentences for the person who will stand beside the line
   */
  public record Answer(
      boolean feasible, Optional<String> limitedBy, List<String> instead, List<String> cautions) {

    public Answer {
      instead = List.copyOf(instead);
      cautions = List.copyOf(cautions);
    }
  }

  /**
   * What the plan was weighed against.
   *
   * @param alternatives the best of every other hose size, cheapest first, and why each lost
   * @param searched how many plans were looked at
   */
  public record Weighed(List<Alternative> alternatives, Searched searched) {
    public Weighed {
      alternatives = List.copyOf(alternatives);
    }
  }

  /**
   * The best plan of another hose size.
   *
   * @param requiredSourcePsi what the source must hold for it, psi
   * @param why why it lost, in one sentence
   */
  public record Alternative(
      HoseChoice hose, boolean feasible, Money total, double requiredSourcePsi, String why) {}

  /**
   * Hose that a line is laid with.
   *
   * @param sizeIn nominal size, in
   * @param couplingSizeIn nominal size of its couplings, in
   * @param series the catalogue's hose line
   * @param lines like lines side by side
   */
  public record HoseChoice(double sizeIn, double couplingSizeIn, String series, int lines) {}

  /**
   * What a search looked at.
   *
   * @param topologies choices of hose, direction and number of lines
   * @param cutByPrice those that could not be cheaper than a plan already found
   * @param cutByPressure those through which not enough pressure could arrive
   * @param plans whole plans priced and checked
   */
  public record Searched(int topologies, int cutByPrice, int cutByPressure, int plans) {}

  public boolean feasible() {
    return answer.feasible();
  }

  public Optional<String> limitedBy() {
    return answer.limitedBy();
  }

  public List<String> instead() {
    return answer.instead();
  }

  public List<String> cautions() {
    return answer.cautions();
  }

  public String summary() {
    return asked.summary();
  }

  public double flowGpm() {
    return asked.flowGpm();
  }

  public double needPsi() {
    return asked.needPsi();
  }

  /** Pressure that the appliance at the end of a way needs, psi. */
  public double needPsi(WayThrough way) {
    return asked.of(way.last()).map(OfLeg::needPsi).orElse(needPsi());
  }

  public List<Joint> joints() {
    return layout.joints();
  }

  public List<Bill.Item> items() {
    return bill.items();
  }

  public Money total() {
    return bill.total();
  }

  public List<Alternative> alternatives() {
    return weighed.alternatives();
  }

  /** What the line is laid with where it leaves the source; empty where nothing is laid. */
  public Optional<HoseChoice> hose() {
    return layout
        .firstHoseLeg()
        .map(
            leg -> {
              Leg.Hose hose = leg.hose().orElseThrow();
              return new HoseChoice(
                  hose.sizeIn(), hose.couplingSizeIn(), hose.series(), leg.lines());
            });
  }

  /** The same line with its goods at other prices, and nothing to compare it with. */
  public LinePlan priced(Bill now) {
    return new LinePlan(
        asked, answer, layout, hydraulics, checks, now, new Weighed(List.of(), weighed.searched()));
  }
}
