package hosewright.line.hose;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.HoseFacts;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.Rating;
import hosewright.hydraulics.law.WaveSpeeds;
import hosewright.line.assembly.FittedGaskets;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.Joining;
import hosewright.line.assembly.LeastRating;
import hosewright.line.assembly.SectionOption;
import hosewright.line.goods.Eligibility;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Hose lines made up on the bench from bulk hose, two couplings and what holds them. */
final class MadeUpHose {
  /** Coupled lengths a bench makes up unasked, longest first: common practice, no source. */
  private static final List<Double> LENGTHS_FT = List.of(100.0, 50.0, 25.0);

  /** Hose lost to trimming both ends square, ft: common practice, no source. */
  private static final int TRIM_FT = 1;

  private final Catalogue catalogue;
  private final Eligibility eligibility;
  private final List<Double> lengthsFt;
  private final Map<Item, Integer> work;

  /**
   * @param sectionFt the only coupled length wanted, ft; empty for the usual ones
   */
  MadeUpHose(Catalogue catalogue, Eligibility eligibility, OptionalDouble sectionFt) {
    this.catalogue = catalogue;
    this.eligibility = eligibility;
    this.lengthsFt = sectionFt.isPresent() ? List.of(sectionFt.getAsDouble()) : LENGTHS_FT;
    this.work = work();
  }

  List<HoseLine> lines() {
    List<HoseLine> lines = new ArrayList<>();
    if (work.isEmpty()) {
      return lines;
    }
    for (Item bulk : catalogue.ofKind(ItemKind.BULK_HOSE)) {
      if (eligibility.hose(bulk)) {
        addLines(bulk, lines);
      }
    }
    return lines;
  }

  private void addLines(Item bulk, List<HoseLine> lines) {
    List<Item> couplings = fitting(ItemKind.COUPLING, bulk);
    for (Item inlet : couplings) {
      for (Item outlet : couplings) {
        if (pairs(inlet.ends().get(0), outlet.ends().get(0))) {
          for (Item attachment : fitting(ItemKind.ATTACHMENT, bulk)) {
            lines.add(line(bulk, inlet, outlet, attachment));
          }
        }
      }
    }
  }

  /** A section couples to its like: its two ends mate, inlet named first. */
  private static boolean pairs(End inlet, End outlet) {
    return Joining.allowedRemovable(inlet, outlet)
        && HoseLines.inlet(List.of(inlet, outlet)).equals(inlet);
  }

  private List<Item> fitting(ItemKind kind, Item bulk) {
    HoseFacts hose = bulk.hose().orElseThrow();
    return catalogue.ofKind(kind).stream()
        .filter(item -> item.hose().isPresent())
        .filter(item -> item.hose().get().sizeIn() == hose.sizeIn())
        .filter(item -> sameBowl(item.hose().get().bowlIn(), hose.bowlIn()))
        .filter(
            item ->
                kind == ItemKind.ATTACHMENT ? eligibility.toBeHad(item) : eligibility.wetted(item))
        .toList();
  }

  private static boolean sameBowl(OptionalDouble part, OptionalDouble hose) {
    return part.isEmpty() || part.equals(hose);
  }

  private HoseLine line(Item bulk, Item inlet, Item outlet, Item attachment) {
    HoseFacts hose = bulk.hose().orElseThrow();
    List<SectionOption> options =
        lengthsFt.stream()
            .map(lengthFt -> option(bulk, inlet, outlet, attachment, lengthFt))
            .toList();
    return new HoseLine(
        hose.series(),
        hose.sizeIn(),
        inlet.ends().get(0),
        outlet.ends().get(0),
        new HoseLine.Bore(
            hose.frictionCoefficient(),
            hose.boreOrNominalIn(),
            WaveSpeeds.of(hose.waveSpeedFtPerS(), hose.type().word())),
        options,
        new HoseLine.Finish(
            bulk.markedTo(),
            FittedGaskets.of(
                inlet.ends().get(0),
                inlet.comesWithGaskets(),
                outlet.ends().get(0),
                outlet.comesWithGaskets()),
            true));
  }

  private SectionOption option(
      Item bulk, Item inlet, Item outlet, Item attachment, double lengthFt) {
    int cutFt = (int) Math.ceil(lengthFt) + TRIM_FT;
    Map<Item, Integer> bill = new LinkedHashMap<>();
    bill.put(bulk, cutFt);
    bill.merge(inlet, 1, Integer::sum);
    bill.merge(outlet, 1, Integer::sum);
    bill.merge(attachment, 2, Integer::sum);
    work.forEach((item, quantity) -> bill.merge(item, quantity, Integer::sum));
    double weightLb =
        bulk.weightLb() * cutFt + inlet.weightLb() + outlet.weightLb() + 2 * attachment.weightLb();
    String description =
        String.format(
            Locale.ROOT,
            "%.0f ft section made up from %d ft of %s, %s x %s",
            lengthFt,
            cutFt,
            bulk.number(),
            inlet.ends().get(0),
            outlet.ends().get(0));
    Rating rating =
        LeastRating.of(
            List.of(bulk.rating(), inlet.rating(), outlet.rating(), attachment.rating()));
    return SectionOption.bought(bulk, lengthFt, description, bill, weightLb, rating);
  }

  /**
   * Labour for two couplings and one pressure test with its tag; empty when the dealer offers none.
   */
  private Map<Item, Integer> work() {
    Map<Item, Integer> work = new LinkedHashMap<>();
    Optional<Item> labour = first(ItemKind.COUPLING_LABOUR);
    Optional<Item> test = first(ItemKind.PRESSURE_TEST);
    if (labour.isPresent() && test.isPresent()) {
      work.put(labour.get(), 2);
      work.put(test.get(), 1);
    }
    return work;
  }

  private Optional<Item> first(ItemKind kind) {
    return catalogue.ofKind(kind).stream().filter(eligibility::toBeHad).findFirst();
  }
}
