package hosewright.fleet.budget;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What replacing hose will cost over the years. The component names are the JSON names.
 *
 * @param ageLimit replacements under the age limit; empty where no limit is set
 * @param survival replacements expected from the agency's own test history, or why there are none
 * @param level the level-funding plan; empty without an age limit
 * @param whatIf the total under other limits and prices
 */
public record FleetBudget(
    Asked asked,
    Fleet fleet,
    Optional<Method> ageLimit,
    Survival survival,
    Purchases purchases,
    Optional<Level> level,
    List<WhatIf> whatIf) {

  /**
   * Usable sections that one item would replace.
   *
   * @param item empty where no item replaces them
   * @param atOnce sections that a rule other than the age limit takes out at once
   * @param ages all others
   * @param breaks today's net price of the item from each quantity up
   */
  public record Hose(
      String item, String description, int atOnce, List<AgeCount> ages, List<PriceBreak> breaks) {}

  /** So many sections of one age in full months. */
  public record AgeCount(int months, int sections) {}

  /**
   * Replacements by one method.
   *
   * @param presentValue today's worth, each year's cost falling at its end
   */
  public record Method(List<MethodYear> years, double sections, Money total, Money presentValue) {}

  /**
   * A year of it.
   *
   * @param low the 80 % band's lower end, which one run in ten stays below; empty under an age
   *     limit
   * @param high its upper end, which one run in ten passes
   */
  public record MethodYear(
      int year,
      LocalDate begins,
      double sections,
      Money cost,
      Optional<Band> low,
      Optional<Band> high) {}

  /** One end of a band; sections and cost are ranked apart. */
  public record Band(int sections, Money cost) {}

  /**
   * What the test history says.
   *
   * @param method empty where it does not suffice
   * @param reason why it does not suffice; empty where it does
   * @param productLimit survival without a law, for comparison
   * @param largestGap the most the law and the product limit differ at any age with at least 20 at
   *     risk
   * @param conventions how the history was read
   */
  public record Survival(
      Optional<Method> method,
      String reason,
      History history,
      Law law,
      List<KaplanMeier.Step> productLimit,
      Optional<Double> largestGap,
      List<String> conventions) {

    /**
     * What is known of wear.
     *
     * @param lives sections that tell something
     * @param failures how many of them wore out
     */
    public record History(int lives, long failures) {}

    /**
     * The Weibull law that fits it.
     *
     * @param shape of the Weibull law; above 1 where hose wears out with age
     * @param scaleYears age that 36.8 % outlive
     * @param medianYears age that half outlive
     */
    public record Law(
        Optional<Double> shape, Optional<Double> scaleYears, Optional<Double> medianYears) {}
  }

  /**
   * What is bought of one item.
   *
   * @param sections of each year, the first year first
   * @param costs of each year
   * @param breaks today's net price from each quantity up
   */
  public record Need(
      String item,
      String description,
      List<Double> sections,
      List<Money> costs,
      List<PriceBreak> breaks) {

    /** Whole sections of the first year, never fewer than needed. */
    public int firstYear() {
      return (int) Math.ceil(sections.get(0) - 1e-9);
    }
  }

  /** From this quantity up, this net price today. */
  public record PriceBreak(int minimumQuantity, Money unitPrice) {}

  /** What one location needs of one item in each year. */
  public record LocationNeed(String location, String item, List<Double> sections) {}

  /** Hose to be replaced without an item to replace it. */
  public record Unpriced(String hose, double sections) {}

  /**
   * Equal yearly spend.
   *
   * @param overdueAllowed most sections overdue at a year's end
   */
  public record Level(Money yearly, int overdueAllowed, List<LevelYear> years) {}

  public record LevelYear(int year, int bought, Money spent, Money carried, int overdue) {}

  /**
   * What ordering together saves.
   *
   * @param apart first year when each location orders for itself
   * @param together first year when all order together
   * @param eachYear all years when each year's need is ordered in its year
   * @param ahead all years when a year's need is ordered a year ahead wherever a break makes it
   *     cheaper
   */
  public record Grouping(
      Money apart, Money together, Money eachYear, Money ahead, List<GroupedOrder> orders) {}

  /** An order that takes next year's need along. */
  public record GroupedOrder(int year, String item, int quantity, int nextYears, Money cost) {}

  /** The total under another limit and with prices changed. */
  public record WhatIf(
      int ageLimitYears,
      BigDecimal priceChange,
      double sections,
      Money total,
      Money presentValue) {}

  /**
   * What was asked.
   *
   * @param from first day of the first year
   * @param ageLimitYears the age limit they follow, years; empty where none is set
   */
  public record Asked(
      LocalDate from,
      int years,
      Optional<Integer> ageLimitYears,
      BigDecimal priceChange,
      BigDecimal escalation,
      BigDecimal discountRate) {}

  /**
   * What is on hand today.
   *
   * @param sections usable sections today
   * @param lengthFt their length, ft
   * @param hose what is on hand, by the item that would replace it and by age
   * @param unpriced hose that no item of the catalogue replaces
   */
  public record Fleet(long sections, double lengthFt, List<Hose> hose, List<Unpriced> unpriced) {}

  /**
   * What is bought, where and when.
   *
   * @param purchaseBy which of the two methods the purchases below follow: age-limit or survival
   * @param needs what is bought, by item and year
   * @param locations the same by location
   * @param grouping what ordering together saves
   */
  public record Purchases(
      Optional<String> purchaseBy,
      List<Need> needs,
      List<LocationNeed> locations,
      Optional<Grouping> grouping) {}
}
