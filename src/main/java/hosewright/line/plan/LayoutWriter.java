package hosewright.line.plan;

import hosewright.catalogue.Item;
import hosewright.job.Job;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Bridge;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.SectionOption;
import hosewright.line.assembly.Span;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Layout;
import hosewright.line.model.Layout.StationDevice;
import hosewright.line.model.Leg;
import hosewright.line.model.Node;
import hosewright.line.model.Owner;
import hosewright.line.model.Part;
import hosewright.line.model.Part.Ends;
import hosewright.line.model.Part.Flow;
import hosewright.line.model.Part.Goods;
import hosewright.line.model.Part.Section;
import hosewright.line.model.Role;
import hosewright.line.water.FrictionChoice;
import hosewright.line.water.LegFigures;
import hosewright.line.water.PlanHydraulics;
import hosewright.line.water.Port;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/** Writes an assembled line down as legs and the nodes where they meet. */
final class LayoutWriter {
  private final Job job;
  private final Assembly line;
  private final Hydraulics hydraulics;

  private LayoutWriter(Job job, Assembly line, Hydraulics hydraulics) {
    this.job = job;
    this.line = line;
    this.hydraulics = hydraulics;
  }

  static Layout of(Job job, Assembly line, Hydraulics hydraulics) {
    LayoutWriter writer = new LayoutWriter(job, line, hydraulics);
    return new Layout(writer.nodes(), writer.legs(), JointWriter.of(line), writer.devices());
  }

  private List<Node> nodes() {
    List<Node> nodes = new ArrayList<>();
    for (Placed part : line.parts()) {
      if (part.role().isNode()) {
        nodes.add(new Node(name(part.role()), part(part), part.lines()));
      }
    }
    return nodes;
  }

  private static String name(Role node) {
    return switch (node) {
      case SOURCE -> "source";
      case SPLIT -> "wye";
      case JOIN -> "siamese";
      case PUMP -> "pump";
      case APPLIANCE -> "appliance";
      case HOSE, ADAPTER, DEVICE -> throw new IllegalArgumentException(node + " is no node");
    };
  }

  private List<Leg> legs() {
    Iterator<LegFigures> figures = LegFigures.of(job, line).iterator();
    List<Leg> legs = new ArrayList<>();
    for (Span span : Span.of(line)) {
      boolean hose = span.parts().stream().anyMatch(Placed::isHose);
      legs.add(leg(span, hose ? Optional.of(figures.next()) : Optional.empty()));
    }
    return legs;
  }

  private Leg leg(Span span, Optional<LegFigures> figures) {
    return new Leg(
        span.name(),
        name(span.begins().role()),
        name(span.ends().role()),
        span.lines(),
        figures.map(LayoutWriter::hose),
        water(span, figures),
        span.parts().stream().map(this::part).toList());
  }

  private static Leg.Hose hose(LegFigures figures) {
    HoseLine hose = figures.leg().hose();
    return new Leg.Hose(
        hose.sizeIn(),
        hose.couplingSizeIn(),
        hose.series(),
        hose.bore().boreIn(),
        figures.leg().neededFt(),
        figures.lay().lengthFt());
  }

  private Leg.Water water(Span span, Optional<LegFigures> figures) {
    return new Leg.Water(
        job.flowGpm() / span.lines(),
        psiBehind(span.first() - 1),
        psiBehind(span.first() + span.parts().size() - 1),
        figures.map(this::friction).orElse(Leg.Friction.NONE),
        figures.filter(f -> hydraulics.calculated()).map(LegFigures::velocityFtPerS).orElse(0.0),
        figures.map(legFigures -> legFigures.load().waterGal()).orElse(0.0));
  }

  private Leg.Friction friction(LegFigures figures) {
    FrictionChoice choice = FrictionChoice.of(job, figures.leg().hose());
    return new Leg.Friction(
        hydraulics.calculated() ? figures.frictionLossPsi() : 0,
        choice.basis(),
        choice.coefficient());
  }

  /** Pressure behind a part of the line with the water flowing, psi; 0 with no figures. */
  private double psiBehind(int place) {
    int station = 0;
    for (Placed part : line.parts().subList(1, place + 1)) {
      station += part.count();
    }
    return hydraulics.calculated() ? hydraulics.ends().get(station).flowingPsi() : 0;
  }

  private Part part(Placed part) {
    return new Part(
        part.role(),
        part.item().isEmpty() && part.role() != Role.ADAPTER ? Owner.BUYER : Owner.DEALER,
        new Goods(part.item().map(Item::number), part.description()),
        new Ends(part.upstream(), part.downstream()),
        part.count(),
        part.thing().sections().map(LayoutWriter::section),
        flow(part));
  }

  private static Section section(Placed.Sections sections) {
    SectionOption option = sections.option();
    return new Section(option.lengthFt(), option.cutFt());
  }

  private Flow flow(Placed part) {
    if (part.role() == Role.SOURCE || part.role() == Role.APPLIANCE) {
      return Flow.NONE;
    }
    Port throat = Port.fastest(part);
    if (!hydraulics.calculated()) {
      return new Flow(throat.boreIn(), 0, 0);
    }
    return new Flow(
        throat.boreIn(),
        throat.velocityFtPerS(job.flowGpm()),
        PlanHydraulics.lossPsi(job, line, part));
  }

  private List<StationDevice> devices() {
    LegShape leg = line.topology().supply();
    double[] endsFt = leg.sectionEndsFt(line.lay());
    List<Integer> couplings = leg.couplings(line.lay());
    List<StationDevice> devices = new ArrayList<>();
    for (int i = 0; i < couplings.size(); i++) {
      LegShape.Midway midway = leg.midway().get(i);
      double atFt = endsFt[couplings.get(i) - 1];
      for (Bridge.Link part : midway.parts()) {
        devices.add(new StationDevice(part.item().number(), midway.stationFt(), atFt));
      }
    }
    return devices;
  }
}
