package hosewright.line.goods;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import hosewright.job.Job;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.GasketCount;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.Placed;
import hosewright.line.model.Unpriced;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Turns an assembled line into what must be bought. */
public final class Billing {
  private final Job job;
  private final NetPrice prices;
  private final Availability availability;
  private final Gaskets gaskets;
  private final Accessories accessories;
  private final Optional<Item> sealant;
  private final PriceFloor floor;

  public Billing(
      Job job,
      Catalogue catalogue,
      NetPrice prices,
      PriceFloor floor,
      Gaskets gaskets,
      Accessories accessories) {
    this.job = job;
    this.prices = prices;
    this.availability = Availability.of(job);
    this.gaskets = gaskets;
    this.accessories = accessories;
    this.floor = floor;
    this.sealant =
        catalogue.ofKind(ItemKind.SEALANT).stream()
            .filter(new Eligibility(job, prices)::wetted)
            .min(Comparator.comparingDouble(item -> floor.ofAll(item, 1)));
  }

  /**
   * Goods and what has no price.
   *
   * @param unpriced parts nobody stocks or that have no price in force
   * @param partsToSource how many of those are no seals: what a seal costs decides between no lines
   * @param pieces what was asked for besides the line
   * @param lacksOnlyAsked whether what cannot be had in such numbers was all asked for by number,
   *     so that every line lacks it
   */
  public record Priced(
      List<Basket.Purchase> purchases,
      List<Unpriced> unpriced,
      int partsToSource,
      List<Piece> pieces,
      boolean lacksOnlyAsked) {}

  public Priced of(Assembly line, List<GasketCount> gasketCounts) {
    return price(wanted(line, 1), gasketCounts);
  }

  /** What a line takes, its gaskets left out, laid so many times. */
  public Wanted wanted(Assembly line, int copies) {
    Basket basket = new Basket();
    List<Unpriced> lacking = new ArrayList<>();
    int spares = job.conditions().spareSections();
    for (int i = 0; i < line.lays().size(); i++) {
      LegShape leg = line.topology().legs().get(i);
      basket.addSections(leg.hose(), line.lays().get(i), leg.lines() * copies, spares);
    }
    addFittings(line, copies, basket, lacking);
    List<Piece> pieces =
        accessories.of(line).stream()
            .map(piece -> copies == 1 ? piece : piece.counting(piece.count() * copies))
            .toList();
    return new Wanted(basket.needs(), lacking, sealedOnThreads(line), pieces);
  }

  /** The same goods priced, with gaskets and sealant. */
  public Priced price(Wanted wanted, List<GasketCount> gasketCounts) {
    Basket basket = new Basket();
    wanted.needs().forEach(need -> basket.add(need.item(), need.quantity()));
    List<Unpriced> unpriced = new ArrayList<>(wanted.lacking());
    int fittings = unpriced.size();
    gasketCounts.forEach(gasket -> addGasket(gasket, basket, unpriced));
    if (wanted.sealant()) {
      addSealant(basket, unpriced);
    }
    int seals = unpriced.size() - fittings;
    for (Piece piece : wanted.pieces()) {
      if (piece.count() > 0) {
        piece
            .item()
            .ifPresentOrElse(
                item -> basket.add(item, piece.count()),
                () -> unpriced.add(Unpriced.part(piece.count(), piece.lacking())));
      }
    }
    List<Basket.Purchase> purchases = basket.purchases(prices, availability);
    purchases.stream()
        .filter(purchase -> purchase.unitPrice().isEmpty())
        .forEach(
            purchase -> unpriced.add(Unpriced.item(purchase.bought(), purchase.item().number())));
    return new Priced(
        purchases,
        List.copyOf(unpriced),
        unpriced.size() - seals,
        wanted.pieces(),
        lacksOnlyAsked(purchases));
  }

  private boolean lacksOnlyAsked(List<Basket.Purchase> purchases) {
    return !accessories.inVain().isEmpty()
        && purchases.stream()
            .filter(purchase -> !availability.toBeHad(purchase.item(), purchase.bought()))
            .allMatch(purchase -> accessories.inVain().contains(purchase.item()));
  }

  /** What one sealant for all threads costs, in the currency's major unit. */
  double sealantCost() {
    return sealant.map(item -> floor.ofAll(item, 1)).orElse(0.0);
  }

  private static void addFittings(
      Assembly line, int copies, Basket basket, List<Unpriced> lacking) {
    for (Placed part : line.parts()) {
      switch (part.role()) {
        case ADAPTER, DEVICE, SPLIT, JOIN ->
            part.item()
                .ifPresentOrElse(
                    item -> basket.add(item, part.lines() * copies),
                    () -> lacking.add(Unpriced.part(part.lines() * copies, part.description())));
        case SOURCE, HOSE, APPLIANCE -> {}
      }
    }
  }

  private void addGasket(GasketCount gasket, Basket basket, List<Unpriced> unpriced) {
    int quantity = gasket.bought() + gasket.spare();
    gaskets
        .cheapest(gasket.end(), quantity)
        .ifPresentOrElse(
            item -> basket.add(item, quantity),
            () -> unpriced.add(Unpriced.part(quantity, "gasket for " + gasket.end())));
  }

  private static boolean sealedOnThreads(Assembly line) {
    return line.joints().stream().anyMatch(joint -> joint.verdict().seal() == Verdict.Seal.THREAD);
  }

  private void addSealant(Basket basket, List<Unpriced> unpriced) {
    sealant.ifPresentOrElse(
        item -> basket.add(item, 1),
        () -> unpriced.add(Unpriced.part(1, "thread sealant for pipe threads")));
  }
}
