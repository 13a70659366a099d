package hosewright.hydraulics;

import hosewright.hydraulics.law.Physical;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Stations along a line, written down from its source on. */
final class Profile {
  private final List<Station> stations = new ArrayList<>();

  Profile(double sourcePsi, double closedSourcePsi) {
    stations.add(new Station("source", 0, 0, sourcePsi, closedSourcePsi, false));
  }

  List<Station> stations() {
    return List.copyOf(stations);
  }

  void add(LineElement element, double flowGpm) {
    int sections = element.sections();
    double lengthFt = element.lengthFt() / sections;
    double lossPsi = element.lossPsi(flowGpm) / sections;
    double boostPsi = element.closedBoostPsi() / sections;
    Ground ground = element.ground();
    boolean even = ground.isEven();
    for (int i = 1; i <= sections; i++) {
      double fromFt = (i - 1) * lengthFt;
      double toFt = i * lengthFt;
      double riseFt =
          even ? element.riseFt() / sections : ground.heightFt(toFt) - ground.heightFt(fromFt);
      String name = sections == 1 ? element.name() : element.name() + " " + i;
      Station from = stations.get(stations.size() - 1);
      Station end = onFrom(from, name, new Ground.Point(lengthFt, riseFt), lossPsi, boostPsi);
      if (!even) {
        within(from, end, ground.from(fromFt, toFt), lossPsi);
      }
      stations.add(end);
    }
  }

  /** A station farther along, so much pressure being lost on the way besides what height takes. */
  private static Station onFrom(
      Station from, String name, Ground.Point along, double lossPsi, double boostPsi) {
    return new Station(
        name,
        from.distanceFt() + along.alongFt(),
        from.elevationFt() + along.heightFt(),
        from.flowingPsi() - lossPsi - along.heightFt() * Physical.PSI_PER_FT,
        from.closedPsi() + boostPsi - along.heightFt() * Physical.PSI_PER_FT,
        false);
  }

  /** The places within a section where ground or pressure stops rising or falling. */
  private void within(Station from, Station end, Ground ground, double lossPsi) {
    List<Station> way = new ArrayList<>(List.of(from));
    for (Ground.Point point : ground.points().subList(1, ground.points().size() - 1)) {
      double lostPsi = lossPsi * point.alongFt() / ground.lengthFt();
      way.add(onFrom(from, end.name(), point, lostPsi, 0));
    }
    way.add(end);
    for (int i = 1; i + 1 < way.size(); i++) {
      int height = turn(way, i, Station::elevationFt);
      if (height != 0 || turn(way, i, Station::flowingPsi) != 0) {
        String what = height > 0 ? "summit in " : height < 0 ? "low point in " : "bend in ";
        stations.add(within(way.get(i), what));
      }
    }
  }

  /** Over 0 at a place from which something falls to both sides, under 0 where it rises. */
  private static int turn(List<Station> way, int place, ToDoubleFunction<Station> what) {
    double here = what.applyAsDouble(way.get(place));
    double before = here - what.applyAsDouble(way.get(place - 1));
    double behind = what.applyAsDouble(way.get(place + 1)) - here;
    return before * behind < 0 ? (int) Math.signum(before) : 0;
  }

  private static Station within(Station at, String what) {
    return new Station(
        what + at.name(), at.distanceFt(), at.elevationFt(), at.flowingPsi(), at.closedPsi(), true);
  }
}
