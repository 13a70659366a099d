package hosewright.line.assembly;

import hosewright.catalogue.Rating;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** The rating of parts that share one pressure: the least of each. */
public final class LeastRating {
  private LeastRating() {}

  public static Rating of(List<Rating> ratings) {
    List<Double> temperaturesF =
        ratings.stream()
            .flatMap(rating -> rating.derating().stream())
            .map(Rating.Derating::temperatureF)
            .distinct()
            .sorted()
            .toList();
    List<Rating.Derating> derating =
        temperaturesF.stream()
            .flatMap(
                temperatureF ->
                    least(ratings, rating -> rating.workingPsiAt(temperatureF))
                        .map(psi -> new Rating.Derating(temperatureF, psi)))
            .toList();
    return new Rating(
        optional(least(ratings, Rating::workingPsi)),
        optional(least(ratings, Rating::serviceTestPsi)),
        derating,
        everyVacuum(ratings));
  }

  private static Stream<Double> least(
      List<Rating> ratings, Function<Rating, OptionalDouble> pressure) {
    return ratings.stream()
        .map(pressure)
        .filter(OptionalDouble::isPresent)
        .map(OptionalDouble::getAsDouble)
        .min(Double::compare)
        .stream();
  }

  private static OptionalDouble optional(Stream<Double> values) {
    return values.mapToDouble(Double::doubleValue).findFirst();
  }

  /** A part without a vacuum rating makes the whole unfit for suction. */
  private static OptionalDouble everyVacuum(List<Rating> ratings) {
    return ratings.stream().allMatch(rating -> rating.vacuumInHg().isPresent())
        ? ratings.stream().mapToDouble(rating -> rating.vacuumInHg().getAsDouble()).min()
        : OptionalDouble.empty();
  }
}
