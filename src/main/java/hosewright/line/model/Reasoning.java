package hosewright.line.model;

import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * Why a plan is the one to offer: what was weighed, and what every other hose would have meant.
 *
 * @param because what decided for the plan, one sentence each
 * @param considered how many candidates there were and what became of them
 * @param runnerUp the next cheapest whole plan that passes every check and buys other goods,
 *     whatever its size; empty when there is none
 * @param others the best plan of every other hose line, best first, and why it lost
 */
public record Reasoning(
    List<String> because, Considered considered, Optional<Rival> runnerUp, List<Rival> others) {

  /** What became of the candidates. */
  public record Considered(Stock stock, Ways ways, Plans plans) {

    /**
     * The hose there was.
     *
     * @param hoses hose items in the catalogue, coupled and by the foot
     * @param leftOut hose items that no line may be laid with, by the reason
     * @param hoseLines makes of hose with their couplings that a line could be laid with
     */
    public record Stock(int hoses, List<Count> leftOut, int hoseLines) {}

    /**
     * The ways to lay it.
     *
     * @param topologies ways to lay them: which hose, which way round, which devices
     * @param unjoined of those, the ways that the catalogue's adapters do not join to both ends
     * @param cutByPrice of those, the ways that could not cost less than a plan already found
     * @param cutByPressure of those, the ways that must fail whatever the choice of parts
     */
    public record Ways(int topologies, int unjoined, int cutByPrice, int cutByPressure) {}

    /**
     * The plans put together to the last gasket.
     *
     * @param wholePlans plans put together to the last gasket and priced
     * @param dearer of those, the plans that cost more than one already found
     * @param failed of those, the plans that failed, by the check
     * @param passed of those, the plans that passed every check
     */
    public record Plans(int wholePlans, int dearer, List<Count> failed, int passed) {}
  }

  /** How often something was so. */
  public record Count(String what, int count) {}

  /**
   * A plan that lost.
   *
   * @param more what it costs beyond the plan; negative where it is cheaper but fails
   * @param requiredSourcePsi pressure the source must hold, psi
   * @param chargedWeightLb weight of all its hose full of water, lb
   * @param fails the check it fails; empty where it does the job
   * @param why why it lost, in a sentence or two
   */
  public record Rival(
      Laid laid,
      Optional<String> fails,
      Money total,
      Money more,
      double requiredSourcePsi,
      double chargedWeightLb,
      String why) {

    /**
     * The hose it was laid with.
     *
     * @param couplings the ends of its sections
     * @param sections sections laid in all
     * @param madeUpSections how many of them are made up on the bench, not bought coupled
     */
    public record Laid(
        double sizeIn,
        String hoseSeries,
        String couplings,
        int lines,
        int sections,
        int madeUpSections) {}
  }
}
