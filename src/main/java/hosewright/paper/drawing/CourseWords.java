package hosewright.paper.drawing;

import hosewright.line.model.Layout;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Node;
import hosewright.line.model.Role;
import hosewright.line.model.SectionCount;
import hosewright.measure.UnitSystem;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is written beside the places and legs of a drawn layout. */
final class CourseWords {
  private final LinePlan plan;
  private final Layout layout;
  private final UnitSystem units;

  CourseWords(LinePlan plan, UnitSystem units) {
    this.plan = plan;
    this.layout = plan.layout();
    this.units = units;
  }

  /** What stands at a place, in short words, with its item number. */
  String place(Node node) {
    String counted = node.count() > 1 && node.role() == Role.APPLIANCE ? node.count() + " x " : "";
    return counted
        + node.part().description()
        + node.part().item().map(item -> " (" + item + ")").orElse("");
  }

  /** What the water does there: at the source what it gives, at an appliance what arrives. */
  Optional<String> water(Node node) {
    if (!plan.hydraulics().calculated()) {
      return Optional.empty();
    }
    return switch (node.role()) {
      case SOURCE ->
          layout.behind(node).stream()
              .findFirst()
              .map(leg -> units.pressure().of(leg.water().inletPsi()) + " here");
      case APPLIANCE -> layout.into(node).stream().findFirst().map(this::arrives);
      default -> Optional.empty();
    };
  }

  private String arrives(Leg leg) {
    String arrives = units.pressure().of(leg.water().outletPsi()) + " arrive";
    return plan.asked()
        .of(leg)
        .map(asked -> arrives + ", " + units.pressure().of(asked.needPsi()) + " needed")
        .orElse(arrives);
  }

  /** The hose of a leg and what flows in it. */
  List<String> leg(Leg leg) {
    String lines = leg.lines() > 1 ? leg.lines() + " lines, in all " : "";
    String hose =
        leg.hose()
            .map(
                one ->
                    lines
                        + sections(leg)
                        + " of "
                        + BigDecimal.valueOf(one.sizeIn()).stripTrailingZeros().toPlainString()
                        + " in hose")
            .orElse("no hose");
    return plan.hydraulics().calculated()
        ? List.of(hose, units.flow().of(leg.water().flowGpm()) + (leg.lines() > 1 ? " each" : ""))
        : List.of(hose);
  }

  private String sections(Leg leg) {
    return leg.sectionCounts().stream().map(this::sections).collect(Collectors.joining(" + "));
  }

  private String sections(SectionCount section) {
    return section.count() + " x " + units.length().of(section.lengthFt());
  }

  /** Where a leg goes that meets others: {@code the siamese, with right}. */
  String meets(Leg leg) {
    Node node = layout.node(leg.ends());
    String others =
        layout.into(node).stream()
            .filter(other -> !other.equals(leg))
            .map(Leg::name)
            .collect(Collectors.joining(" and "));
    return "meets " + others;
  }

  /** Which legs meet at a place. */
  String meeting(Node node) {
    return layout.into(node).stream().map(Leg::name).collect(Collectors.joining(" and ")) + " meet";
  }
}
