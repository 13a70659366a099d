package hosewright.line.layout.search;

import hosewright.catalogue.Item;
import hosewright.hydraulics.Boost;
import hosewright.hydraulics.Inlet;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.PumpCurve;
import hosewright.hydraulics.suction.Drafting;
import hosewright.job.layout.LayoutBooster;
import hosewright.job.layout.LayoutPump;
import hosewright.job.layout.LegJob;
import hosewright.line.assembly.Bridge;
import hosewright.line.assembly.GasketCount;
import hosewright.line.assembly.Placed;
import hosewright.line.water.FittingLoss;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * A wye, water thief, manifold, siamese or pump in its place, with the outlet each leg behind it
 * hangs on.
 *
 * @param item what is bought; empty for a pump of the buyer's
 * @param inlet the end that the leg before it ends at
 * @param outlets one for each leg behind it, in their order
 * @param lossesPsi what it takes on the way to each, psi; less than nothing where it pumps
 * @param pump what it is besides, where it pumps
 */
public record Divider(
    Optional<Item> item,
    End inlet,
    List<End> outlets,
    List<Double> lossesPsi,
    Optional<Pump> pump) {
  public Divider {
    outlets = List.copyOf(outlets);
    lossesPsi = List.copyOf(lossesPsi);
  }

  /** What only divides. */
  public Divider(Item item, End inlet, List<End> outlets, List<Double> lossesPsi) {
    this(Optional.of(item), inlet, outlets, lossesPsi, Optional.empty());
  }

  /**
   * A pump at work.
   *
   * @param name what the buyer calls it
   * @param drafting how it draws its water, where it draws it from below
   */
  public record Pump(String name, PumpCurve curve, Boost boost, Optional<Drafting> drafting) {}

  /**
   * A pump to be bought; what it may give at the most is its relief setting, if no lower one is
   * asked for.
   *
   * @param outlets one for each leg behind it
   */
  static Divider of(Item item, LayoutBooster asked, double flowGpm, List<End> outlets) {
    PumpCurve curve = curve(item);
    double reliefPsi =
        Math.min(
            asked.reliefPsi().orElse(Double.POSITIVE_INFINITY),
            item.rating().workingPsi().orElse(Double.POSITIVE_INFINITY));
    Boost boost = Boost.of(curve, flowGpm, asked.leastIntakePsi(), reliefPsi);
    return new Divider(
        Optional.of(item),
        item.ends().get(0),
        outlets,
        outlets.stream().map(end -> -boost.addsPsi()).toList(),
        Optional.of(new Pump(asked.name(), curve, boost, Optional.empty())));
  }

  private static PumpCurve curve(Item item) {
    return new PumpCurve(
        item.form().pump().orElseThrow().curve().stream()
            .map(point -> new PumpCurve.Point(point.flowGpm(), point.psi()))
            .toList());
  }

  /** A pump of the buyer's, with legs on some of its discharges. */
  static Divider of(LayoutPump pump, double flowGpm, List<End> outlets) {
    Boost boost = pump.at(flowGpm);
    return new Divider(
        Optional.empty(),
        pump.intake(),
        outlets,
        outlets.stream().map(end -> -boost.addsPsi()).toList(),
        Optional.of(new Pump(pump.name(), pump.curve(), boost, pump.drafting())));
  }

  /**
   * Water enters by the first end.
   *
   * @param legs what hangs on the outlets, in their order
   */
  static Divider of(Item item, List<End> outlets, List<LegJob> legs) {
    double wholeGpm = legs.stream().mapToDouble(LegJob::flowGpm).sum();
    End inlet = item.ends().get(0);
    List<Double> lossesPsi = new ArrayList<>();
    for (int i = 0; i < outlets.size(); i++) {
      Placed part = towards(item, inlet, outlets.get(i));
      lossesPsi.add(lossPsi(part, wholeGpm, legs.get(i).eachGpm()));
    }
    return new Divider(item, inlet, outlets, lossesPsi);
  }

  /**
   * A siamese, which is taken to lose what it loses where all its inlets pass as much.
   *
   * @param legs those that meet there
   */
  static Divider joining(Bridge.Link siamese, LegJob legs) {
    double lossPsi = FittingLoss.of(Placed.inLine(siamese, 1)).lossPsi(legs.flowGpm());
    return new Divider(
        siamese.item(), siamese.upstream(), List.of(siamese.downstream()), List.of(lossPsi));
  }

  /** As a part of a line towards a leg behind it. */
  public Placed towards(int leg) {
    End outlet = outlets.get(leg);
    return item.map(one -> towards(one, inlet, outlet))
        .orElseGet(() -> Placed.pump(pump.orElseThrow().name(), inlet, outlet));
  }

  /** What it does to pressure, where it pumps. */
  public Optional<Boost> boost() {
    return pump.map(Pump::boost);
  }

  /** The most that it bears with nothing flowing where it is not a pump, psi. */
  double bearsPsi(double temperatureF) {
    return item.flatMap(one -> one.rating().workingPsiAt(temperatureF).stream().boxed().findFirst())
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** What must stand before it whatever hangs on it, psi. */
  double leastPsi() {
    return boost().map(Boost::leastIntakePsi).orElse(Double.NEGATIVE_INFINITY);
  }

  /** Whether it lets as much stand behind it as a leg there needs. */
  boolean lets(Sum behind) {
    return boost().map(one -> !one.relieves(behind.needsPsi())).orElse(true);
  }

  /** What hangs on it as it is seen from before it, its losses left out. */
  Sum seen(Sum behind) {
    return boost()
        .map(one -> behind.bearing(one.bearsAtIntakePsi(behind.bearsPsi())))
        .orElse(behind);
  }

  /** What a leg behind it is fed with. */
  public Inlet feeds(int leg, Inlet before) {
    return boost()
        .map(
            one ->
                new Inlet(
                    one.outletPsi(before.flowingPsi()), one.closedOutletPsi(before.closedPsi())))
        .orElseGet(() -> new Inlet(before.flowingPsi() - lossPsi(leg), before.closedPsi()));
  }

  /** What it costs alone. */
  double cost(ToDoubleFunction<Item> ofItem) {
    return item.map(ofItem::applyAsDouble).orElse(0.0);
  }

  private static Placed towards(Item item, End inlet, End outlet) {
    return Placed.inLine(new Bridge.Link(item, inlet, outlet), 1);
  }

  /** What it takes on the way to a leg, psi. */
  public double lossPsi(int leg) {
    return lossesPsi.get(leg);
  }

  /** Its inlet sees the whole flow and its outlet the leg's own; the greater loss counts. */
  private static double lossPsi(Placed part, double wholeGpm, double legGpm) {
    LineElement loss = FittingLoss.of(part);
    return Math.max(loss.lossPsi(wholeGpm), loss.lossPsi(legGpm * part.branches()));
  }

  /**
   * The gaskets in its ends that it does not bring: the legs that hang on them count those as the
   * buyer's own.
   *
   * @param inlets how many lines end at it
   * @param copies how many times each leg is laid
   */
  List<GasketCount> gasketsToBuy(int inlets, List<Integer> copies) {
    if (item.map(Item::comesWithGaskets).orElse(true)) {
      return List.of();
    }
    List<GasketCount> gaskets = new ArrayList<>();
    if (inlet.carriesGasket()) {
      gaskets.add(new GasketCount(inlet, 0, inlets, -inlets));
    }
    for (int i = 0; i < outlets.size(); i++) {
      if (outlets.get(i).carriesGasket()) {
        int each = copies.get(i);
        gaskets.add(new GasketCount(outlets.get(i), 0, each, -each));
      }
    }
    return GasketCount.together(gaskets, List.of());
  }
}
