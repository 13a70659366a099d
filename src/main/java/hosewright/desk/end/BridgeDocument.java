package hosewright.desk.end;

import hosewright.csv.PlainNumber;
import hosewright.line.assembly.Bridge;
import hosewright.line.bridge.StockBridges.Gap;
import hosewright.line.bridge.StockBridges.Way;
import hosewright.thread.End;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.joda.money.Money;

/**
 * A bridge as scripts read it.
 *
 * @param chain adapters of the catalogue, in the order water meets them
 * @param cost of the chain; null where there is no chain to price
 * @param missing adapters to be found elsewhere, each named by its two ends
 * @param joints every joint the bridge makes, as far as the law knows it
 * @param removable whether all of them come apart again
 * @param neckIn how wide the chain is where it is narrower than both ends, in; null where it is not
 * @param workingPsi least rating of the chain in cold water, psi; null when a part has none
 */
public record BridgeDocument(
    List<Step> chain,
    Money cost,
    List<Wanted> missing,
    List<Joint> joints,
    boolean removable,
    Double neckIn,
    Double workingPsi) {

  public record Step(String item, End in, End out, String description) {}

  public record Wanted(End in, End out) {}

  public record Joint(End upstream, End downstream, Verdict verdict) {}

  static BridgeDocument of(End from, End to, Way way) {
    List<Step> chain =
        way.links().stream()
            .map(
                l ->
                    new Step(
                        l.item().number(), l.upstream(), l.downstream(), l.item().description()))
            .toList();
    List<Wanted> missing =
        way.missing().stream().map(gap -> new Wanted(gap.upstream(), gap.downstream())).toList();
    List<Joint> joints = joints(from, to, way);
    return new BridgeDocument(
        chain,
        chain.isEmpty() && !missing.isEmpty() ? null : way.cost(),
        missing,
        joints,
        joints.stream().allMatch(joint -> joint.verdict().removable()),
        boxed(way.neckIn(from, to)),
        !way.missing().isEmpty() ? null : boxed(leastPsi(way.links())));
  }

  private static List<Joint> joints(End from, End to, Way way) {
    List<Gap> parts =
        new ArrayList<>(
            way.links().stream().map(l -> new Gap(l.upstream(), l.downstream())).toList());
    parts.addAll(way.missingFirst() ? 0 : parts.size(), way.missing());
    List<Joint> joints = new ArrayList<>();
    End open = from;
    for (Gap part : parts) {
      joints.add(new Joint(open, part.upstream(), Mating.of(open, part.upstream())));
      open = part.downstream();
    }
    joints.add(new Joint(open, to, Mating.of(open, to)));
    return joints;
  }

  private static OptionalDouble leastPsi(List<Bridge.Link> links) {
    return links.stream().allMatch(link -> link.item().rating().workingPsi().isPresent())
        ? links.stream().mapToDouble(link -> link.item().rating().workingPsi().getAsDouble()).min()
        : OptionalDouble.empty();
  }

  private static Double boxed(OptionalDouble number) {
    return number.isPresent() ? number.getAsDouble() : null;
  }

  /** Joints that do not come apart again, for which a buyer wants the reason. */
  public List<Joint> permanentJoints() {
    return joints.stream()
        .filter(joint -> joint.verdict().mates() && !joint.verdict().removable())
        .toList();
  }

  /** How narrow it is at its narrowest, where that is too narrow: {@code 1.5 in}. */
  String neck() {
    return PlainNumber.of(neckIn) + " in";
  }

  /** The parts as a buyer asks for them, by ends and number. */
  public String toBuy() {
    return chain.stream()
        .map(step -> step.in() + " x " + step.out() + " (" + step.item() + ")")
        .collect(Collectors.joining(", then "));
  }

  /** The parts in a row, for example {@code A-2NPSHFS-15NHM}; a missing one by its ends. */
  public String inWords() {
    List<String> parts = new ArrayList<>(chain.stream().map(Step::item).toList());
    for (Wanted wanted : missing) {
      String named = wanted.in() + " x " + wanted.out() + " (to be sourced)";
      boolean first = joints.get(0).downstream().equals(wanted.in()) && !chain.isEmpty();
      parts.add(first ? 0 : parts.size(), named);
    }
    return String.join(", then ", parts);
  }
}
