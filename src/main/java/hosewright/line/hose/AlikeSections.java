package hosewright.line.hose;

import hosewright.catalogue.Item;
import hosewright.catalogue.NetPrice;
import hosewright.catalogue.Rating;
import hosewright.job.Job;
import hosewright.job.question.Asked;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.SectionOption;
import hosewright.line.goods.Availability;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * Finds sections that nobody would lay, because the same make has one as long that never costs
 * more, weighs no more, is as strong and can be had in any number: jackets of another colour,
 * mostly.
 */
final class AlikeSections {
  private final NetPrice prices;
  private final Availability availability;

  /** What is bought besides the line; more of it in the line may bring both to a price break. */
  private final Set<String> asked;

  AlikeSections(Job job, NetPrice prices) {
    this.prices = prices;
    this.availability = Availability.of(job);
    this.asked =
        job.accessories().stream()
            .map(wanted -> Asked.of(wanted).what())
            .collect(Collectors.toUnmodifiableSet());
  }

  /** The hose line without them. */
  HoseLine without(HoseLine line) {
    return line.withOptions(
        line.options().stream().filter(option -> !isNeedless(option, line.options())).toList());
  }

  /** Of two that are alike in everything the first stays. */
  private boolean isNeedless(SectionOption option, List<SectionOption> options) {
    int place = options.indexOf(option);
    return IntStream.range(0, options.size())
        .anyMatch(
            i ->
                i != place
                    && replaces(options.get(i), option)
                    && (i < place || !replaces(option, options.get(i))));
  }

  private boolean replaces(SectionOption one, SectionOption other) {
    return one.lengthFt() == other.lengthFt()
        && one.weightLb() <= other.weightLb()
        && noWeaker(one.rating(), other.rating())
        && isOneItem(one)
        && isOneItem(other)
        && !asked.contains(other.item().orElseThrow().number())
        && replaces(one.item().orElseThrow(), other.item().orElseThrow());
  }

  /** At any temperature; what is not rated is held to nothing. */
  private static boolean noWeaker(Rating one, Rating other) {
    double unrated = Double.POSITIVE_INFINITY;
    return one.serviceTestPsi().orElse(unrated) >= other.serviceTestPsi().orElse(unrated)
        && one.vacuumInHg().orElse(0) >= other.vacuumInHg().orElse(0)
        && DoubleStream.concat(
                Stream.of(one.derating(), other.derating())
                    .flatMap(List::stream)
                    .mapToDouble(Rating.Derating::temperatureF),
                DoubleStream.of(Double.POSITIVE_INFINITY))
            .allMatch(
                temperatureF ->
                    one.workingPsiAt(temperatureF).orElse(unrated)
                        >= other.workingPsiAt(temperatureF).orElse(unrated));
  }

  private static boolean isOneItem(SectionOption option) {
    return option.bill().size() == 1 && !option.isOwned();
  }

  /** All that would be bought of the other may be added to the one, at no more a piece. */
  private boolean replaces(Item one, Item other) {
    if (availability.mostOf(one) < Integer.MAX_VALUE) {
      return false;
    }
    List<Integer> quantities =
        Stream.of(List.of(1), prices.breakQuantities(one), prices.breakQuantities(other))
            .flatMap(List::stream)
            .distinct()
            .sorted()
            .toList();
    Optional<Money> before = Optional.empty();
    for (int quantity : quantities) {
      Optional<Money> price = prices.unitPrice(one, quantity);
      if (price.isEmpty()
          || isDearer(price, prices.unitPrice(other, quantity))
          || isDearer(price, before)) {
        return false;
      }
      before = price;
    }
    return true;
  }

  private static boolean isDearer(Optional<Money> price, Optional<Money> than) {
    return than.isPresent() && price.orElseThrow().isGreaterThan(than.get());
  }
}
