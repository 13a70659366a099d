package hosewright.job.question;

import hosewright.hydraulics.Ground;
import java.util.List;

/**
 * A way that was surveyed: how high it lies, place by place, from the source to the appliance.
 *
 * @param places two or more, each farther along than the one before; the first is the source
 */
public record Route(List<Place> places) {

  /**
   * A place on the way.
   *
   * @param alongFt distance along the ground from the source, ft
   * @param elevationFt height over whatever the survey measures from, ft
   * @param note what is there, in words; may be empty
   */
  public record Place(double alongFt, double elevationFt, String note) {}

  public Route {
    places = List.copyOf(places);
  }

  /** Whether a text lists places, rather than naming a file that does. */
  public static boolean listedIn(String text) {
    return RouteForm.lists(text);
  }

  /** Distance from the source to the appliance along the ground, ft. */
  public double lengthFt() {
    return places.get(places.size() - 1).alongFt();
  }

  /** The heights over the source. */
  public Ground ground() {
    double sourceFt = places.get(0).elevationFt();
    return new Ground(
        places.stream()
            .map(place -> new Ground.Point(place.alongFt(), place.elevationFt() - sourceFt))
            .toList());
  }
}
