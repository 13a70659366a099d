package hosewright.line.search;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import hosewright.job.Job;
import hosewright.line.assembly.Choice;
import hosewright.line.assembly.GasketCount;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.MakeUpOrder;
import hosewright.line.assembly.Placed;
import hosewright.line.bridge.BridgeGraph;
import hosewright.line.bridge.GapBridges;
import hosewright.line.goods.Basket;
import hosewright.line.goods.Gaskets;
import hosewright.line.goods.Goods;
import hosewright.line.goods.SharedCosts;
import hosewright.line.hose.LegLays;
import hosewright.thread.End;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * The lays and the bridges that are worth taking in a leg of a layout: of two, the one that loses
 * no more, stands as much and is never dearer makes the other needless.
 */
final class LegParts {
  private static final double HAIR = 1e-9;

  private final Job job;
  private final int copies;
  private final Catalogue catalogue;
  private final NetPrice prices;
  private final Gaskets gaskets;
  private final SharedCosts costs;
  private OptionalDouble mostSavedOnBridges = OptionalDouble.empty();

  /**
   * @param copies how many times the leg is laid
   * @param shop whose prices have the breaks that are reached together
   */
  LegParts(Job job, int copies, Shop shop, Gaskets gaskets, SharedCosts costs) {
    this.job = job;
    this.copies = copies;
    this.catalogue = shop.catalogue();
    this.prices = shop.prices();
    this.gaskets = gaskets;
    this.costs = costs;
  }

  /**
   * A lay or a bridge that may be worth taking.
   *
   * @param compared what it takes
   * @param eases whether it makes a joint that needs no turning, where none is sure without it
   */
  private record Part<T>(Choice<T> choice, SharedCosts.Compared compared, boolean eases) {}

  private <T> Part<T> part(Choice<T> choice, Goods goods, boolean eases) {
    return new Part<>(choice, costs.compared(goods), eases);
  }

  /**
   * Adds a part unless another loses no more, stands as much, eases as much, and is never dearer.
   *
   * @param mostPsi what nothing is asked to stand more than
   * @param others what the other may cost besides its goods
   */
  private <T> void add(
      Part<T> part, List<Part<T>> parts, double mostPsi, ToDoubleFunction<T> others) {
    for (Part<T> other : parts) {
      Choice<T> choice = other.choice();
      if (choice.lossPsi() <= part.choice().lossPsi() + HAIR
          && choice.ratedPsi() >= Math.min(mostPsi, part.choice().ratedPsi()) - HAIR
          && (other.eases() || !part.eases())
          && costs.mostOver(other.compared(), part.compared())
                  + others.applyAsDouble(choice.value())
              <= HAIR) {
        return;
      }
    }
    parts.add(part);
  }

  /**
   * The bridges over a gap that are worth taking, up to the first that is dearer, however the rest
   * is bought, than one that takes as little as any, stands as much as is ever asked and eases.
   *
   * @param madeAnyway whether the line can be made up whatever bridges its gaps
   */
  List<Choice<List<Placed>>> bridges(GapBridges gap, double mostPsi, boolean madeAnyway) {
    List<Part<List<Placed>>> bridges = new ArrayList<>();
    double enough = Double.POSITIVE_INFINITY;
    int at = 0;
    Optional<Choice<List<Placed>>> next = gap.at(at);
    while (next.isPresent() && next.get().leastCost() * copies <= enough) {
      Choice<List<Placed>> choice = next.get();
      Goods goods = goods(choice.value());
      boolean eases = madeAnyway || choice.value().stream().anyMatch(MakeUpOrder::eases);
      add(part(choice, goods, eases), bridges, mostPsi, this::mostSeals);
      if (eases && choice.lossPsi() <= gap.leastLossPsi() + HAIR && choice.ratedPsi() >= mostPsi) {
        enough =
            Math.min(
                enough,
                costs.mostOver(goods, Goods.NOTHING)
                    + mostSeals(choice.value())
                    + mostSavedOnBridges());
      }
      next = gap.at(++at);
    }
    return bridges.stream().map(Part::choice).toList();
  }

  private Goods goods(List<Placed> bridge) {
    return Goods.of(
        bridge.stream()
            .flatMap(
                part ->
                    part.item().stream().map(item -> new Basket.Need(item, part.lines() * copies)))
            .toList(),
        List.of());
  }

  /** What seals the joints of a bridge at the most. */
  private double mostSeals(List<Placed> bridge) {
    return mostGaskets(bridge) + (mayTakeSealant(bridge) ? costs.sealantCost() : 0);
  }

  /** Whether a joint in or at a bridge may be sealed on its threads. */
  private boolean mayTakeSealant(List<Placed> bridge) {
    Stream<End> ends =
        bridge.isEmpty()
            ? Stream.of(job.from(), job.to())
            : bridge.stream()
                .flatMap(part -> Stream.of(part.upstream(), part.downstream()))
                .flatMap(Optional::stream);
    return ends.anyMatch(end -> Mating.of(end, end.opposite()).seal() == Verdict.Seal.THREAD);
  }

  /** What gaskets in and at a bridge cost at the most, each with one to spare. */
  private double mostGaskets(List<Placed> bridge) {
    return bridge.stream()
        .flatMap(part -> Stream.of(part.upstream(), part.downstream()))
        .flatMap(Optional::stream)
        .filter(End::carriesGasket)
        .mapToDouble(end -> gaskets.mostEach(end) * (copies * job.wishes().fewestLines() + 1))
        .sum();
  }

  /** No bridge saves more than this on what the rest buys of its adapters. */
  private double mostSavedOnBridges() {
    if (mostSavedOnBridges.isEmpty()) {
      double most =
          catalogue.ofKind(ItemKind.ADAPTER).stream()
              .filter(item -> prices.breakQuantities(item).size() > 1)
              .mapToDouble(costs::mostSaved)
              .max()
              .orElse(0);
      mostSavedOnBridges = OptionalDouble.of(most * BridgeGraph.MOST_ADAPTERS);
    }
    return mostSavedOnBridges.getAsDouble();
  }

  /** The lays of a leg that are worth taking. */
  List<Choice<Lay>> lays(LegShape leg, LegLays lays) {
    Choice<Lay> shortest = lays.shortest();
    double mostPsi = PressureBudget.mostCarriedPsi(job, leg.hose());
    double saved = mostSaved(leg.hose());
    double enough =
        shortest.ratedPsi() >= mostPsi
            ? costs.mostOver(goods(leg, shortest.value()), Goods.NOTHING) + saved
            : Double.POSITIVE_INFINITY;
    List<Part<Lay>> kept = new ArrayList<>();
    kept.add(part(shortest, goods(leg, shortest.value()), true));
    lays.each(
        begun -> begun.cost() * copies > enough,
        choice -> add(part(choice, goods(leg, choice.value()), true), kept, mostPsi, lay -> 0));
    return kept.stream().map(Part::choice).distinct().toList();
  }

  private Goods goods(LegShape leg, Lay lay) {
    int lines = leg.lines() * copies;
    Basket basket = new Basket();
    basket.addSections(leg.hose(), lay, lines, job.conditions().spareSections());
    return Goods.of(
        basket.needs(), GasketCount.between(leg.hose(), lay.sections() * lines).stream().toList());
  }

  private double mostSaved(HoseLine hose) {
    return hose.options().stream()
        .flatMap(option -> option.bill().keySet().stream())
        .distinct()
        .mapToDouble(costs::mostSaved)
        .sum();
  }
}
