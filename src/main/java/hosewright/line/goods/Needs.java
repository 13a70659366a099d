package hosewright.line.goods;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.Sort;
import hosewright.job.Job;
import hosewright.job.question.Asked;
import hosewright.job.question.SourceKind;
import hosewright.thread.End;
import hosewright.thread.Families;
import hosewright.thread.Family;
import hosewright.thread.FamilyKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToIntFunction;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;

/** How many of each thing asked for a line needs, and which item serves. */
final class Needs {
  private final Job job;
  private final Eligibility eligibility;
  private final PriceFloor floor;
  private final Candidates candidates;
  private final NozzleFit nozzles;

  Needs(Job job, Eligibility eligibility, PriceFloor floor, Candidates candidates) {
    this.job = job;
    this.eligibility = eligibility;
    this.floor = floor;
    this.candidates = candidates;
    this.nozzles = new NozzleFit(job);
  }

  /**
   * Some of one thing, of which any candidate serves.
   *
   * @param lacking what is to be sourced where there is none, in words; nothing where empty
   * @param counts how many of each candidate
   */
  record Want(
      String asked,
      Place place,
      List<Item> candidates,
      Optional<String> lacking,
      ToIntFunction<Item> counts,
      int count) {

    int count(Item item) {
      return counts.applyAsInt(item);
    }
  }

  /** What is bought for one thing asked for. */
  List<Piece> of(String wanted, int times, Around around) {
    List<Piece> pieces = new ArrayList<>();
    List<Want> wants = wants(wanted, times, around);
    if (wants.isEmpty()) {
      pieces.add(Piece.needless(wanted));
    }
    for (Want want : wants) {
      Optional<Item> chosen = choice(want);
      if (chosen.isPresent()) {
        Item item = chosen.get();
        pieces.add(new Piece(wanted, chosen, "", want.count(item), want.place(), care(item, want)));
      } else if (want.candidates().isEmpty() && want.count() > 0) {
        want.lacking()
            .ifPresent(
                what ->
                    pieces.add(
                        new Piece(
                            wanted,
                            Optional.empty(),
                            what,
                            want.count(),
                            want.place(),
                            Optional.empty())));
      }
    }
    return pieces;
  }

  /**
   * Of the candidates the nearest to what is wanted, of those one of which enough can be had if
   * any, and of those what costs least; empty where none serves or none is needed.
   */
  Optional<Item> choice(Want want) {
    return want.candidates().stream()
        .filter(item -> want.count(item) > 0)
        .min(
            Comparator.comparingLong(this::away)
                .thenComparing(item -> !eligibility.toBeHad(item, want.count(item)))
                .thenComparingDouble(item -> floor.ofAll(item, want.count(item))));
  }

  /** Nozzles that give the same to a hundredth part are alike, and the cheaper is taken. */
  private long away(Item item) {
    return item.kind() == ItemKind.NOZZLE ? Math.round(nozzles.away(item).orElse(1) * 100) : 0;
  }

  private Optional<String> care(Item item, Want want) {
    if (want.place() == Place.APPLIANCE && item.kind() == ItemKind.NOZZLE) {
      return nozzles.care(item);
    }
    return Accessories.unsorted(item);
  }

  /**
   * Everything that one thing asked for takes.
   *
   * @param times how often it was asked for in the same words
   */
  List<Want> wants(String wanted, int times, Around around) {
    Asked asked = Asked.of(wanted);
    Meant meant = candidates.meant(asked.what());
    OptionalInt said =
        asked.count().isPresent() || times == 1 ? asked.count() : OptionalInt.of(times);
    return switch (meant.place()) {
      case APPLIANCE -> List.of(atAppliance(wanted, meant, said));
      case COUPLINGS -> wrenches(wanted, meant, said, around);
      case HYDRANT -> List.of(hydrantWrench(wanted, meant, said.orElse(1)));
      case JOINTS -> restraints(wanted, meant, said, around);
      case ENDS -> ends(wanted, meant, said, around);
      case CROSSING -> List.of(ramp(wanted, meant, asked, said, around));
      case SOURCE, SPLIT, BESIDE -> List.of(beside(wanted, meant, said.orElse(1), around));
    };
  }

  private Want atAppliance(String wanted, Meant meant, OptionalInt said) {
    int count = said.orElse(job.appliances());
    if (meant.kind() == ItemKind.MONITOR) {
      List<Item> fitting =
          candidates.fitting(
              meant,
              item ->
                  meets(item, job.to())
                      && item.water().ratedFlowGpm().orElse(job.flowEachGpm())
                          >= job.flowEachGpm());
      return want(wanted, meant, fitting, count, none("monitor", job.to(), nozzles.wanted()));
    }
    List<Item> fitting =
        candidates.fitting(
            meant,
            item ->
                meets(item, job.to())
                    && (nozzles.givesGpm(item).isEmpty() || nozzles.matches(item)));
    List<Item> known = fitting.stream().filter(nozzles::matches).toList();
    return want(
        wanted,
        meant,
        known.isEmpty() ? fitting : known,
        count,
        none(meant.what(), job.to(), nozzles.wanted()));
  }

  private static String none(String what, End end, String gives) {
    return "%s with a %s end that gives %s, of which none is sold".formatted(what, end, gives);
  }

  private static Want want(
      String wanted, Meant meant, List<Item> items, int count, String lacking) {
    return new Want(wanted, meant.place(), items, Optional.of(lacking), item -> count, count);
  }

  /** What turns an end, of that what turns most of the others too: one is carried for both. */
  private List<Item> fittingMost(Meant meant, End end, List<End> others) {
    List<Item> fitting = candidates.fitting(meant, item -> turns(item, end));
    ToLongFunction<Item> reach =
        item -> others.stream().filter(other -> turns(item, other)).count();
    long most = fitting.stream().mapToLong(reach).max().orElse(0);
    return fitting.stream().filter(item -> reach.applyAsLong(item) == most).toList();
  }

  /** One sort of spanner for all couplings where one fits them all, else as few sorts as do. */
  private List<Want> wrenches(String wanted, Meant meant, OptionalInt said, Around around) {
    List<End> couplings =
        Stream.concat(
                around.stretches().stream().flatMap(stretch -> stretch.couplings().stream()),
                Stream.of(job.from(), job.to()).filter(end -> isTurned(meant, end)))
            .filter(end -> !meant.plain() || !closesByHand(end))
            .toList();
    List<Item> forAll =
        candidates.fitting(meant, item -> couplings.stream().allMatch(end -> turns(item, end)));
    List<Want> wants = new ArrayList<>();
    if (!couplings.isEmpty() && (!forAll.isEmpty() || meant.item().isPresent())) {
      wants.add(spanners(wanted, meant, said, couplings.get(0), forAll));
    } else {
      List<End> kinds = new ArrayList<>();
      couplings.stream()
          .filter(end -> kinds.stream().noneMatch(other -> like(other, end)))
          .forEach(kinds::add);
      while (!kinds.isEmpty()) {
        End end = kinds.remove(0);
        List<Item> fitting = fittingMost(meant, end, kinds);
        wants.add(spanners(wanted, meant, said, end, fitting));
        kinds.removeIf(
            other -> !fitting.isEmpty() && fitting.stream().allMatch(item -> turns(item, other)));
      }
    }
    if (meant.plain() && said.isEmpty() && job.source() == SourceKind.HYDRANT) {
      List<Item> sold = candidates.fitting(Meant.of(Sort.HYDRANT_WRENCH), item -> true);
      wants.add(new Want(wanted, Place.HYDRANT, sold, Optional.empty(), item -> 1, 1));
    }
    return wants;
  }

  /** A line's own two ends are coupled to as well; pipe is made up with other tools. */
  private boolean isTurned(Meant meant, End end) {
    return !candidates.fitting(meant, item -> turns(item, end)).isEmpty();
  }

  /** Cam and groove is drawn up by its arms, and a push-in joint has nothing to turn. */
  private static boolean closesByHand(End end) {
    return Families.find(end.family())
        .map(Family::kind)
        .filter(kind -> kind == FamilyKind.CAM || kind == FamilyKind.INSTANTANEOUS)
        .isPresent();
  }

  private static Want spanners(
      String wanted, Meant meant, OptionalInt said, End end, List<Item> fitting) {
    return new Want(
        wanted,
        meant.place(),
        fitting,
        Optional.of(meant.what() + " for " + end.sizeAndFamily() + ", of which none is sold"),
        item -> said.orElse(item.sort() == Sort.SPANNER_SET ? 1 : usual(item)),
        said.orElse(2));
  }

  private static int usual(Item item) {
    return item.sort() == Sort.UNKNOWN ? 1 : 2;
  }

  private static boolean turns(Item item, End end) {
    return item.ends().isEmpty() || item.ends().stream().anyMatch(fits -> like(fits, end));
  }

  private Want hydrantWrench(String wanted, Meant meant, int count) {
    return want(
        wanted,
        meant,
        candidates.fitting(meant, item -> true),
        count,
        meant.what() + ", of which none is sold");
  }

  /** Cables across the joints of each stretch, and at its ends where no count was named. */
  private List<Want> restraints(String wanted, Meant meant, OptionalInt said, Around around) {
    if (said.isPresent()) {
      return List.of(restraint(wanted, meant, around.first().sizeIn(), said.getAsInt()));
    }
    List<Want> wants = new ArrayList<>();
    for (Around.Stretch stretch : around.stretches()) {
      Want joints = restraint(wanted, meant, stretch.sizeIn(), stretch.allJoints());
      boolean unsorted = joints.candidates().stream().allMatch(item -> item.sort() == Sort.UNKNOWN);
      if (!joints.candidates().isEmpty() && unsorted) {
        // What does not say which it is counts for both.
        wants.add(
            restraint(wanted, meant, stretch.sizeIn(), stretch.allJoints() + stretch.allEnds()));
        continue;
      }
      wants.add(joints);
      if (meant.plain()) {
        wants.add(ends(wanted, Meant.of(Sort.END_RESTRAINT), stretch));
      }
    }
    return wants;
  }

  private List<Want> ends(String wanted, Meant meant, OptionalInt said, Around around) {
    return said.isPresent()
        ? List.of(restraint(wanted, meant, around.first().sizeIn(), said.getAsInt()))
        : around.stretches().stream().map(stretch -> ends(wanted, meant, stretch)).toList();
  }

  private Want ends(String wanted, Meant meant, Around.Stretch stretch) {
    return restraint(wanted, meant, stretch.sizeIn(), stretch.allEnds());
  }

  private Want restraint(String wanted, Meant meant, double sizeIn, int count) {
    List<Item> fitting = candidates.fitting(meant, item -> takes(item, sizeIn));
    return want(
        wanted,
        meant,
        fitting,
        count,
        meant.what() + " for the hose, of which none of that size is sold");
  }

  private Want ramp(String wanted, Meant meant, Asked asked, OptionalInt said, Around around) {
    Around.Stretch hose = around.first();
    int lanes = asked.lanes().orElse(1);
    List<Item> fitting = candidates.fitting(meant, item -> takes(item, hose.sizeIn()));
    ToIntFunction<Item> counts =
        item -> {
          int channels = item.form().channels().orElse(1);
          return said.orElse(lanes * ((hose.lines() + channels - 1) / channels));
        };
    return new Want(
        wanted,
        meant.place(),
        fitting,
        Optional.of("ramp for the hose, of which none of that size is sold"),
        counts,
        said.orElse(lanes));
  }

  private Want beside(String wanted, Meant meant, int count, Around around) {
    List<Item> fitting = candidates.fitting(meant, item -> fits(item, around.first()));
    return want(
        wanted, meant, fitting, count, meant.what() + ", of which none of that size is sold");
  }

  /** The size on a ramp or restraint is the largest hose it takes. */
  private static boolean takes(Item item, double hoseSizeIn) {
    return item.hose().isEmpty() || item.hose().get().sizeIn() >= hoseSizeIn;
  }

  /** What names no end fits any; else it names one of the hose's. */
  private static boolean fits(Item item, Around.Stretch hose) {
    return takes(item, hose.sizeIn()) && turns(item, hose.inlet());
  }

  private static boolean meets(Item item, End end) {
    return item.ends().stream().anyMatch(own -> like(own, end) && own.gender() == end.gender());
  }

  private static boolean like(End one, End other) {
    return one.sizeIn() == other.sizeIn() && one.family().equals(other.family());
  }
}
