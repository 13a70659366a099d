package hosewright.fleet.budget;

import hosewright.catalogue.Item;
import hosewright.catalogue.NetPrice;
import hosewright.fleet.budget.FleetBudget.Band;
import hosewright.fleet.budget.FleetBudget.GroupedOrder;
import hosewright.fleet.budget.FleetBudget.Grouping;
import hosewright.fleet.budget.FleetBudget.Method;
import hosewright.fleet.budget.FleetBudget.MethodYear;
import hosewright.fleet.budget.FleetBudget.Need;
import hosewright.fleet.budget.FleetBudget.PriceBreak;
import hosewright.fleet.budget.FleetBudget.WhatIf;
import hosewright.fleet.record.HoseKind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Makes a fleet's budget from the ages of its hose, its history and the dealer's prices. */
public final class BudgetMaker {
  private static final List<Integer> OTHER_LIMITS = List.of(8, 10, 12, 15);
  private static final List<BigDecimal> PRICE_CHANGES =
      List.of(new BigDecimal("-0.10"), BigDecimal.ZERO, new BigDecimal("0.10"));

  private final HoseAges ages;
  private final double lengthFt;
  private final SurvivalStudy study;
  private final ReplacementItems items;
  private final NetPrice netPrices;
  private final Money nothing;

  /**
   * @param ages the usable sections
   * @param lengthFt their length, ft
   * @param netPrices the buyer's prices, which {@code items} were chosen by
   */
  public BudgetMaker(
      HoseAges ages,
      double lengthFt,
      SurvivalStudy study,
      ReplacementItems items,
      NetPrice netPrices,
      CurrencyUnit currency) {
    this.ages = ages;
    this.lengthFt = lengthFt;
    this.study = study;
    this.items = items;
    this.netPrices = netPrices;
    this.nothing = Money.zero(currency);
  }

  public FleetBudget make(BudgetRequest request) {
    BudgetPrices prices = new BudgetPrices(items, request);
    Optional<Replacements> byAge =
        request.ageLimitYears().isPresent()
            ? Optional.of(
                AgeLimitForecast.of(ages, request.ageLimitYears().getAsInt(), request.years()))
            : Optional.empty();
    Optional<Replacements> bySurvival =
        Optional.ofNullable(study.attempt().fit())
            .map(fit -> SurvivalForecast.of(ages, fit.law(), request.years()));
    Optional<ItemDemand> bought =
        byAge.or(() -> bySurvival).map(demand -> new ItemDemand(demand, prices));
    return new FleetBudget(
        new FleetBudget.Asked(
            request.from(),
            request.years(),
            request.ageLimitYears().stream().boxed().findFirst(),
            request.rates().priceChange(),
            request.rates().escalation(),
            request.rates().discountRate()),
        new FleetBudget.Fleet(
            ages.sections(),
            lengthFt,
            OnHand.of(ages, prices, this::breaks),
            bought.map(ItemDemand::unpriced).orElse(List.of())),
        byAge.map(demand -> method(demand, prices, request, new TreeMap<>())),
        study.answer(
            bySurvival.map(demand -> method(demand, prices, request, bands(prices, request)))),
        new FleetBudget.Purchases(
            bought.map(any -> byAge.isPresent() ? "age-limit" : "survival"),
            bought.map(demand -> needs(demand, prices, request)).orElse(List.of()),
            bought.map(ItemDemand::locationNeeds).orElse(List.of()),
            bought.map(demand -> grouping(demand, prices, request))),
        byAge.flatMap(any -> bought).map(d -> LevelPlan.of(d, prices, request, currency())),
        whatIf(request));
  }

  private CurrencyUnit currency() {
    return nothing.getCurrencyUnit();
  }

  private Method method(
      Replacements demand, BudgetPrices prices, BudgetRequest request, Map<Integer, Band[]> bands) {
    ItemDemand byItem = new ItemDemand(demand, prices);
    List<MethodYear> years = new ArrayList<>();
    double sections = 0;
    for (int year = 1; year <= request.years(); year++) {
      Optional<Band[]> band = Optional.ofNullable(bands.get(year));
      years.add(
          new MethodYear(
              year,
              request.from().plusYears(year - 1L),
              demand.in(year),
              byItem.cost(year, prices, nothing),
              band.map(ends -> ends[0]),
              band.map(ends -> ends[1])));
      sections += demand.in(year);
    }
    List<Money> costs = years.stream().map(MethodYear::cost).toList();
    return new Method(
        years,
        sections,
        costs.stream().reduce(nothing, Money::plus),
        PresentValue.of(costs, request.rates().discountRate()));
  }

  /** The 80 % band of each year. */
  private Map<Integer, Band[]> bands(BudgetPrices prices, BudgetRequest request) {
    List<Map<HoseKind, int[]>> runs =
        new FailureSimulation(ages, study.attempt().fit(), request.years())
            .runs(new SplittableRandom(request.seed()));
    Map<Integer, Band[]> bands = new TreeMap<>();
    for (int year = 1; year <= request.years(); year++) {
      int[] sections = new int[runs.size()];
      Money[] costs = new Money[runs.size()];
      for (int run = 0; run < runs.size(); run++) {
        Map<Item, Double> byItem = new LinkedHashMap<>();
        for (Map.Entry<HoseKind, int[]> kind : runs.get(run).entrySet()) {
          int failed = kind.getValue()[year];
          sections[run] += failed;
          prices
              .item(kind.getKey())
              .ifPresent(item -> byItem.merge(item, (double) failed, Double::sum));
        }
        costs[run] = nothing;
        for (Map.Entry<Item, Double> item : byItem.entrySet()) {
          costs[run] = costs[run].plus(prices.cost(item.getKey(), item.getValue(), year));
        }
      }
      bands.put(year, SurvivalStudy.band(sections, costs));
    }
    return bands;
  }

  private List<Need> needs(ItemDemand demand, BudgetPrices prices, BudgetRequest request) {
    List<Need> needs = new ArrayList<>();
    demand
        .byItem()
        .forEach(
            (item, sections) -> {
              List<Money> costs = new ArrayList<>();
              for (int year = 1; year <= request.years(); year++) {
                costs.add(prices.cost(item, sections[year], year));
              }
              needs.add(
                  new Need(
                      item.number(),
                      item.description(),
                      ItemDemand.list(sections),
                      costs,
                      breaks(item)));
            });
    return needs;
  }

  private List<PriceBreak> breaks(Item item) {
    List<Integer> quantities = netPrices.breakQuantities(item);
    return (quantities.isEmpty() ? List.of(1) : quantities)
        .stream()
            .distinct()
            .sorted()
            .map(from -> new PriceBreak(from, items.unitPrice(item, from)))
            .toList();
  }

  private Grouping grouping(ItemDemand demand, BudgetPrices prices, BudgetRequest request) {
    Money eachYear = nothing;
    Money ahead = nothing;
    List<GroupedOrder> orders = new ArrayList<>();
    for (Map.Entry<Item, double[]> need : demand.byItem().entrySet()) {
      Item item = need.getKey();
      int[] whole = new int[request.years() + 1];
      for (int year = 1; year <= request.years(); year++) {
        whole[year] = (int) Math.round(need.getValue()[year]);
        eachYear = eachYear.plus(prices.cost(item, whole[year], year));
      }
      for (OrderGroups.Order order :
          OrderGroups.cheapest(whole, (year, of) -> prices.cost(item, of, year), nothing)) {
        ahead = ahead.plus(order.cost());
        if (order.ahead() > 0) {
          orders.add(
              new GroupedOrder(
                  order.year(), item.number(), order.quantity(), order.ahead(), order.cost()));
        }
      }
    }
    return new Grouping(
        demand.apart(prices, nothing), demand.cost(1, prices, nothing), eachYear, ahead, orders);
  }

  private List<WhatIf> whatIf(BudgetRequest request) {
    List<WhatIf> answers = new ArrayList<>();
    for (int limit : limits(request)) {
      for (BigDecimal change : PRICE_CHANGES) {
        BudgetRequest asked = request.whatIf(limit, request.rates().priceChange().add(change));
        Replacements demand = AgeLimitForecast.of(ages, limit, request.years());
        Method method = method(demand, new BudgetPrices(items, asked), asked, new TreeMap<>());
        answers.add(
            new WhatIf(
                limit,
                asked.rates().priceChange(),
                method.sections(),
                method.total(),
                method.presentValue()));
      }
    }
    return answers;
  }

  private static List<Integer> limits(BudgetRequest request) {
    return Stream.concat(OTHER_LIMITS.stream(), request.ageLimitYears().stream().boxed())
        .distinct()
        .sorted()
        .toList();
  }
}
