package hosewright.line.search;

import hosewright.catalogue.HoseType;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.Stated;
import hosewright.job.Job;
import hosewright.job.question.ApplianceKind;
import hosewright.job.question.Practice;
import hosewright.job.question.Use;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Bridge;
import hosewright.line.assembly.Placed;
import hosewright.line.goods.Basket;
import hosewright.line.model.Role;
import java.util.ArrayList;
import java.util.List;

/** The trade's rules, held to a line part by part, the plain way. */
final class PlainPractice {
  /** A bore a twentieth under a nominal size counts as of that size. */
  private static final double OF_A_SIZE = 0.9499;

  private final Job job;

  PlainPractice(Job job) {
    this.job = job;
  }

  boolean keeps(Assembly line, List<Basket.Purchase> purchases) {
    return (lifted("narrow-fitting") || nothingTooNarrow(line.parts()))
        && (lifted("plain-wye") || eachHandLineHasAGate(line.parts()))
        && (lifted("hose-type") || hoseIsOfItsType(line.parts()) && sparesServe(line, purchases));
  }

  /** Whether any other line is laid before it. */
  boolean ranksLast(Assembly line, List<Basket.Purchase> purchases) {
    return madeUp(purchases) || small(line);
  }

  /** A hand line of 1.5 in hose flows 125 gpm at the most. */
  private boolean small(Assembly line) {
    double lastIn = 0;
    for (Placed part : line.parts()) {
      lastIn = part.role() == Role.HOSE ? part.hose().sizeIn() : lastIn;
    }
    return job.service().use() == Use.FIRE
        && inTheHand()
        && !lifted("small-hand-line")
        && lastIn < 1.6
        && job.flowEachGpm() > 125;
  }

  /** Fire hose that is coupled on the bench, to be laid or to spare. */
  private boolean madeUp(List<Basket.Purchase> purchases) {
    return job.service().use() == Use.FIRE
        && !lifted("made-up-hose")
        && purchases.stream().anyMatch(purchase -> purchase.item().kind() == ItemKind.BULK_HOSE);
  }

  /** What does not say whether it has gates is let pass. */
  private boolean eachHandLineHasAGate(List<Placed> parts) {
    boolean handLines = job.attack().isPresent() && inTheHand();
    return !handLines
        || parts.stream()
            .filter(part -> part.role() == Role.SPLIT)
            .noneMatch(part -> part.item().orElseThrow().form().gated() == Stated.NO);
  }

  private boolean inTheHand() {
    return job.appliance() == ApplianceKind.NOZZLE;
  }

  /** For fire attack hose in the hand, supply hose too before it; for work all but suction hose. */
  private boolean hoseIsOfItsType(List<Placed> parts) {
    Placed last = null;
    for (Placed part : parts) {
      last = part.role() == Role.HOSE ? part : last;
    }
    for (Placed part : parts) {
      if (part.role() != Role.HOSE || part.item().isEmpty()) {
        continue;
      }
      if (!serves(part.item().get().hoseType(), inTheHand() && part.hose() == last.hose())) {
        return false;
      }
    }
    return true;
  }

  /**
   * Where the buyer's own hose is laid, a section is bought to spare that could lie in its place.
   */
  private boolean sparesServe(Assembly line, List<Basket.Purchase> purchases) {
    return line.lays().size() > 1
        || purchases.stream()
            .filter(purchase -> purchase.item().hose().isPresent())
            .allMatch(purchase -> serves(purchase.item().hoseType(), inTheHand()));
  }

  /** What is of no known type is let pass. */
  private boolean serves(HoseType type, boolean heldInTheHand) {
    return type == HoseType.UNKNOWN
        || switch (job.service().use()) {
          case FIRE -> type == HoseType.ATTACK || type == HoseType.SUPPLY && !heldInTheHand;
          case WATER -> type != HoseType.SUCTION && !(type == HoseType.DISCHARGE && heldInTheHand);
          case DRINKING -> type == HoseType.DRINKING_WATER;
          default -> throw new IllegalStateException("no random job is for that");
        };
  }

  private boolean lifted(String rule) {
    return job.conditions().allowed().stream().map(Practice::id).anyMatch(rule::equals);
  }

  private static boolean nothingTooNarrow(List<Placed> parts) {
    for (int i = 1; i < parts.size() - 1; i++) {
      Placed part = parts.get(i);
      if (part.role() == Role.HOSE) {
        continue;
      }
      if (divides(part)) {
        double inIn = side(part, part.upstream().orElseThrow().sizeIn());
        double outIn = side(part, part.downstream().orElseThrow().sizeIn());
        if (inIn < wanted(parts, i, true) || outIn < wanted(parts, i, false)) {
          return false;
        }
      } else if (bore(part) < wanted(parts, i, dividerAhead(parts, i))) {
        return false;
      }
    }
    return true;
  }

  /**
   * How wide a place must be.
   *
   * @param upstreamSide whether it lies on the source's side of a wye or siamese, if one is there
   */
  private static double wanted(List<Placed> parts, int place, boolean upstreamSide) {
    int before = place - 1;
    while (before > 0 && parts.get(before).role() != Role.HOSE) {
      before--;
    }
    int behind = place + 1;
    while (behind < parts.size() - 1 && parts.get(behind).role() != Role.HOSE) {
      behind++;
    }
    double beforeIn = parts.get(before).downstream().orElseThrow().sizeIn();
    double behindIn = parts.get(behind).upstream().orElseThrow().sizeIn();
    boolean divided = parts.subList(before + 1, behind).stream().anyMatch(PlainPractice::divides);
    if (divided && upstreamSide && parts.get(before).role() == Role.HOSE) {
      return beforeIn * OF_A_SIZE;
    }
    if (divided && !upstreamSide && parts.get(behind).role() == Role.HOSE) {
      return behindIn * OF_A_SIZE;
    }
    return Math.min(beforeIn, behindIn) * OF_A_SIZE;
  }

  /** Whether a wye or siamese comes before the next hose or the appliance. */
  private static boolean dividerAhead(List<Placed> parts, int place) {
    for (int i = place + 1; i < parts.size() && parts.get(i).role() != Role.HOSE; i++) {
      if (divides(parts.get(i))) {
        return true;
      }
    }
    return false;
  }

  private static boolean divides(Placed part) {
    return part.role() == Role.SPLIT || part.role() == Role.JOIN;
  }

  private static double smallestEnd(Placed part) {
    return Math.min(
        part.upstream().orElseThrow().sizeIn(), part.downstream().orElseThrow().sizeIn());
  }

  /** What its row states, where that is less than its smallest end. */
  private static double bore(Placed part) {
    double endIn = smallestEnd(part);
    return part.item()
        .map(item -> Math.min(endIn, item.water().waterwayIn().orElse(endIn)))
        .orElse(endIn);
  }

  /** The narrowest bore of what divides or joins lies at its smallest ends. */
  private static double side(Placed part, double endIn) {
    return endIn == smallestEnd(part) ? bore(part) : endIn;
  }

  /**
   * Of some choices of devices those a master would take: none narrower than the line, and such as
   * need no reducer on one side and increaser on the other; else none narrower; else any.
   */
  List<List<Bridge.Link>> ofFullSize(
      List<List<Bridge.Link>> choices, double upstreamIn, double downstreamIn) {
    if (lifted("reduced-device")) {
      return choices;
    }
    double lineIn = Math.min(upstreamIn, downstreamIn);
    List<List<Bridge.Link>> wide =
        choices.stream()
            .filter(
                devices ->
                    devices.stream()
                        .allMatch(device -> bore(Placed.inLine(device, 1)) >= lineIn * OF_A_SIZE))
            .toList();
    List<List<Bridge.Link>> even =
        wide.stream().filter(devices -> even(devices, upstreamIn, downstreamIn)).toList();
    return !even.isEmpty() ? even : !wide.isEmpty() ? wide : choices;
  }

  /** Whether sizes along some devices go down or up, not down and up. */
  private static boolean even(List<Bridge.Link> devices, double upstreamIn, double downstreamIn) {
    List<Double> sizesIn = new ArrayList<>(List.of(upstreamIn));
    for (Bridge.Link device : devices) {
      sizesIn.add(device.upstream().sizeIn());
      sizesIn.add(device.downstream().sizeIn());
    }
    sizesIn.add(downstreamIn);
    List<Double> rising = sizesIn.stream().sorted().toList();
    List<Double> falling = sizesIn.stream().sorted((a, b) -> Double.compare(b, a)).toList();
    return sizesIn.equals(rising) || sizesIn.equals(falling);
  }
}
