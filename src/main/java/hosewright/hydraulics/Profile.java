package hosewright.hydraulics;

import hosewright.hydraulics.law.Physical;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Stations along a line, written down from its source on. */
final class Profile {
  private static final List<ToDoubleFunction<Station>> WHAT_TURNS =
      List.of(Station::elevationFt, Station::flowingPsi);

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
      way.add(turned(onFrom(from, end.name(), point, lostPsi, 0)));
    }
    way.add(end);
    for (int i = 1; i + 1 < way.size(); i++) {
      int here = i;
      if (WHAT_TURNS.stream().anyMatch(what -> turns(way, here, what))) {
        stations.add(way.get(i));
      }
    }
  }

  private static boolean turns(List<Station> way, int place, ToDoubleFunction<Station> what) {
    double here = what.applyAsDouble(way.get(place));
    double before = here - what.applyAsDouble(way.get(place - 1));
    double behind = what.applyAsDouble(way.get(place + 1)) - here;
    return before * behind < 0;
  }

  private static Station turned(Station at) {
    return new Station(
        at.name(), at.distanceFt(), at.elevationFt(), at.flowingPsi(), at.closedPsi(), true);
  }
}
