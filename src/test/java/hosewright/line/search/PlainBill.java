package hosewright.line.search;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import hosewright.job.Conditions;
import hosewright.job.Job;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.SectionOption;
import hosewright.line.goods.Basket;
import hosewright.line.goods.Eligibility;
import hosewright.line.model.Role;
import hosewright.thread.End;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Counts what a line takes and prices it in whole cents, the plain way a clerk would. */
public final class PlainBill {
  private final Job job;
  private final Catalogue catalogue;
  private final NetPrice prices;
  private final List<Item> gaskets;
  private final List<Item> sealants;
  private final Map<Counted, Basket.Purchase> known = new LinkedHashMap<>();

  public PlainBill(Job job, Catalogue catalogue, NetPrice prices) {
    Eligibility eligibility = new Eligibility(job, prices);
    this.job = job;
    this.catalogue = catalogue;
    this.prices = prices;
    this.gaskets = catalogue.ofKind(ItemKind.GASKET).stream().filter(eligibility::wetted).toList();
    this.sealants =
        catalogue.ofKind(ItemKind.SEALANT).stream().filter(eligibility::wetted).toList();
  }

  private record Counted(String number, int quantity) {}

  List<Basket.Purchase> of(Assembly line) {
    Tally tally = new Tally();
    add(line, tally);
    addAccessories(tally.needs);
    return purchases(tally);
  }

  /**
   * What legs take that hang on a wye of their own: bought, sealed and spared together.
   *
   * @param legs the one before the wye first
   */
  public List<Basket.Purchase> of(Item wye, List<Assembly> legs) {
    Tally tally = new Tally();
    tally.needs.put(wye.number(), 1);
    for (int leg = 0; leg < legs.size(); leg++) {
      boolean before = leg == 0;
      add(legs.get(leg), tally);
      for (Assembly.MadeJoint joint : legs.get(leg).joints()) {
        // Counted as the buyer's own; what is bought may come without.
        if (!wye.comesWithGaskets() && !before && joint.upstreamPart().role() == Role.SOURCE) {
          tally.without(joint.upstream());
        }
        if (!wye.comesWithGaskets() && before && joint.downstreamPart().role() == Role.APPLIANCE) {
          tally.without(joint.downstream());
        }
      }
    }
    return purchases(tally);
  }

  /** What legs take that meet at nothing that is bought. */
  public List<Basket.Purchase> of(List<Assembly> legs) {
    Tally tally = new Tally();
    legs.forEach(leg -> add(leg, tally));
    return purchases(tally);
  }

  /** What is counted of one line or several. */
  private static final class Tally {
    private final Map<String, Integer> needs = new LinkedHashMap<>();
    private final Map<String, int[]> allAndBought = new LinkedHashMap<>();
    private final Map<String, End> ends = new LinkedHashMap<>();
    private boolean onThreads;

    void without(End end) {
      if (end.carriesGasket()) {
        allAndBought.get(kind(end))[1]++;
      }
    }
  }

  private List<Basket.Purchase> purchases(Tally tally) {
    addGaskets(tally);
    if (tally.onThreads) {
      cheapest(sealants, 1).ifPresent(item -> need(tally.needs, item, 1));
    }
    List<Basket.Purchase> purchases = new ArrayList<>();
    tally.needs.forEach(
        (number, quantity) -> purchases.add(cheapest(catalogue.item(number).get(), quantity)));
    return purchases;
  }

  private void add(Assembly line, Tally tally) {
    Map<String, Integer> needs = tally.needs;
    for (int leg = 0; leg < line.lays().size(); leg++) {
      Lay lay = line.lays().get(leg);
      HoseLine hose = line.topology().legs().get(leg).hose();
      int beside = line.topology().legs().get(leg).lines();
      for (int i = 0; i < hose.options().size(); i++) {
        int sections = lay.counts().get(i) * beside;
        hose.options().get(i).bill().forEach((item, each) -> need(needs, item, each * sections));
      }
      spare(hose, lay)
          .ifPresent(
              spare ->
                  spare
                      .bill()
                      .forEach(
                          (item, each) ->
                              need(needs, item, each * spareSections(hose, lay, beside))));
    }
    for (Placed part : line.parts()) {
      if (part.role().isFitting()) {
        need(needs, part.item().orElseThrow(), part.lines());
      }
    }
    countGaskets(line, tally);
    tally.onThreads |=
        line.joints().stream().anyMatch(j -> j.verdict().seal() == Verdict.Seal.THREAD);
  }

  public static long cents(Basket.Purchase purchase) {
    return purchase.unitPrice().orElseThrow().getAmountMinorLong() * purchase.bought();
  }

  private void addAccessories(Map<String, Integer> needs) {
    int wrenches = (int) job.accessories().stream().filter("wrench"::equals).count();
    if (wrenches > 0) {
      List<Item> some =
          catalogue.ofKind(ItemKind.WRENCH).stream().filter(item -> inStock(item, 1)).toList();
      List<Item> enough = some.stream().filter(item -> inStock(item, wrenches)).toList();
      cheapest(enough.isEmpty() ? some : enough, wrenches)
          .ifPresent(item -> need(needs, item, wrenches));
    }
    for (String wanted : job.accessories()) {
      String[] counted = wanted.split(" x ");
      int count = counted.length == 2 ? Integer.parseInt(counted[0]) : 1;
      catalogue
          .item(counted[counted.length - 1])
          .filter(item -> item.kind() != ItemKind.VALVE)
          .ifPresent(item -> need(needs, item, count));
    }
  }

  /** One for each gasketed end in a joint. */
  private void countGaskets(Assembly line, Tally tally) {
    Map<String, int[]> allAndBought = tally.allAndBought;
    Map<String, End> ends = tally.ends;
    for (Assembly.MadeJoint joint : line.joints()) {
      int times = joint.count() * joint.lines();
      count(joint.upstreamPart(), false, joint.upstream(), times, allAndBought, ends);
      count(joint.downstreamPart(), true, joint.downstream(), times, allAndBought, ends);
    }
    for (int leg = 0; leg < line.lays().size(); leg++) {
      Lay lay = line.lays().get(leg);
      HoseLine hose = line.topology().legs().get(leg).hose();
      int spares = spareSections(hose, lay, line.topology().legs().get(leg).lines());
      if (spare(hose, lay).isPresent() && spares > 0) {
        count(hose.inlet(), hose.finish().gaskets().atInlet(), spares, allAndBought, ends);
        count(hose.outlet(), hose.finish().gaskets().atOutlet(), spares, allAndBought, ends);
      }
    }
  }

  /** A tenth of all, and at least one, more than are to be bought, for the bag. */
  private void addGaskets(Tally tally) {
    tally.allAndBought.forEach(
        (kind, counts) -> {
          int quantity = counts[1] + Math.max(1, (counts[0] + 9) / 10);
          End end = tally.ends.get(kind);
          List<Item> fitting =
              gaskets.stream()
                  .filter(item -> item.ends().get(0).sizeIn() == end.sizeIn())
                  .filter(item -> item.ends().get(0).family().equals(end.family()))
                  .toList();
          List<Item> had = fitting.stream().filter(item -> inStock(item, quantity)).toList();
          cheapest(had.isEmpty() ? fitting : had, quantity)
              .ifPresent(item -> need(tally.needs, item, quantity));
        });
  }

  private static void count(
      Placed part,
      boolean facesSource,
      End end,
      int times,
      Map<String, int[]> allAndBought,
      Map<String, End> ends) {
    boolean there =
        switch (part.role()) {
          case SOURCE, PUMP, APPLIANCE -> true;
          case HOSE -> part.item().isEmpty() || brought(part, facesSource, end);
          case ADAPTER, DEVICE, SPLIT, JOIN -> part.item().orElseThrow().comesWithGaskets();
        };
    count(end, there, times, allAndBought, ends);
  }

  /** A section that is turned around meets the water with its outlet. */
  private static boolean brought(Placed section, boolean facesSource, End end) {
    HoseLine hose = section.hose();
    boolean sexless = hose.inlet().equals(hose.outlet());
    boolean inlet = sexless ? facesSource : end.equals(hose.inlet());
    return inlet ? hose.finish().gaskets().atInlet() : hose.finish().gaskets().atOutlet();
  }

  private static void count(
      End end, boolean there, int times, Map<String, int[]> allAndBought, Map<String, End> ends) {
    if (!end.carriesGasket()) {
      return;
    }
    String kind = kind(end);
    ends.putIfAbsent(kind, end);
    int[] counts = allAndBought.computeIfAbsent(kind, k -> new int[2]);
    counts[0] += times;
    counts[1] += there ? 0 : times;
  }

  private static String kind(End end) {
    return end.sizeIn() + " " + end.family();
  }

  private static void need(Map<String, Integer> needs, Item item, int quantity) {
    if (quantity > 0) {
      needs.merge(item.number(), quantity, Integer::sum);
    }
  }

  private Optional<Item> cheapest(List<Item> items, int quantity) {
    Item best = null;
    long least = Long.MAX_VALUE;
    for (Item item : items) {
      long cents = cents(cheapest(item, quantity));
      if (cents < least) {
        best = item;
        least = cents;
      }
    }
    return Optional.ofNullable(best);
  }

  private Basket.Purchase cheapest(Item item, int needed) {
    return known.computeIfAbsent(
        new Counted(item.number(), needed), asked -> tryEveryQuantity(item, needed));
  }

  /** Looks at every quantity up to where the last break sets in. */
  private Basket.Purchase tryEveryQuantity(Item item, int needed) {
    Basket.Purchase best = purchase(item, needed, needed);
    int last = prices.breakQuantities(item).stream().mapToInt(q -> q).max().orElse(needed);
    for (int bought = needed + 1; bought <= last && !item.kind().isWork(); bought++) {
      Basket.Purchase more = purchase(item, needed, bought);
      if (inStock(item, bought) && cents(more) < cents(best)) {
        best = more;
      }
    }
    return best;
  }

  private Basket.Purchase purchase(Item item, int needed, int bought) {
    return new Basket.Purchase(item, needed, bought, prices.unitPrice(item, bought));
  }

  /** Owned sections that are left over and as long as any laid need not be bought. */
  private int spareSections(HoseLine hose, Lay lay, int beside) {
    List<SectionOption> options = hose.options();
    double longestFt = 0;
    for (int i = 0; i < options.size(); i++) {
      if (lay.counts().get(i) > 0) {
        longestFt = Math.max(longestFt, options.get(i).lengthFt());
      }
    }
    int wanted = job.conditions().spareSections();
    for (int i = 0; i < options.size(); i++) {
      if (options.get(i).isOwned() && options.get(i).lengthFt() >= longestFt) {
        int laid = lay.counts().get(i) * beside;
        wanted -= options.get(i).owned().orElseThrow().count() - laid;
      }
    }
    return Math.max(0, wanted);
  }

  /**
   * A spare is bought like the longest section laid, or the next longer, or the longest there is.
   */
  private static Optional<SectionOption> spare(HoseLine hose, Lay lay) {
    List<SectionOption> options = hose.options();
    List<SectionOption> laid =
        IntStream.range(0, options.size())
            .filter(i -> lay.counts().get(i) > 0)
            .mapToObj(options::get)
            .toList();
    double longestFt = laid.stream().mapToDouble(SectionOption::lengthFt).max().orElseThrow();
    List<SectionOption> sold = options.stream().filter(option -> !option.isOwned()).toList();
    OptionalDouble lengthFt =
        sold.stream().mapToDouble(SectionOption::lengthFt).filter(ft -> ft >= longestFt).min();
    if (lengthFt.isEmpty()) {
      lengthFt = sold.stream().mapToDouble(SectionOption::lengthFt).max();
    }
    double ft = lengthFt.orElse(0);
    List<SectionOption> alike = sold.stream().filter(option -> option.lengthFt() == ft).toList();
    return alike.stream().filter(laid::contains).findFirst().or(() -> alike.stream().findFirst());
  }

  private boolean inStock(Item item, int quantity) {
    if (item.stocking().onHand() >= quantity) {
      return true;
    }
    if (item.discontinued()) {
      return false;
    }
    Conditions terms = job.conditions();
    boolean inTime =
        terms.deliverBy().isEmpty()
            || !job.date()
                .orElseThrow()
                .plusDays(item.stocking().leadDays())
                .isAfter(terms.deliverBy().get());
    return item.kind().isWork() || !terms.stockOnly() && inTime;
  }
}
