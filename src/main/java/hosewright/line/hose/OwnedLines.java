package hosewright.line.hose;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.HoseFacts;
import hosewright.catalogue.HoseType;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.Rating;
import hosewright.csv.PlainNumber;
import hosewright.hydraulics.law.WaveSpeeds;
import hosewright.job.Job;
import hosewright.job.Wishes;
import hosewright.job.question.OwnedHose;
import hosewright.line.assembly.FittedGaskets;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.SectionOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Hose lines that use sections the buyer has: those sections alone, and with each make of the
 * catalogue that couples to them.
 */
final class OwnedLines {
  private final Job job;
  private final Catalogue catalogue;

  OwnedLines(Job job, Catalogue catalogue) {
    this.job = job;
    this.catalogue = catalogue;
  }

  /**
   * @param bought the hose lines that the buyer's wishes allow
   */
  List<HoseLine> with(List<HoseLine> bought) {
    List<HoseLine> lines = new ArrayList<>();
    for (List<OwnedHose> alike : alike()) {
      lines.add(alone(alike));
      bought.stream()
          .filter(hose -> alike.get(0).goesWith(hose.sizeIn(), hose.inlet(), hose.outlet()))
          .map(hose -> together(hose, alike))
          .forEach(lines::add);
    }
    return lines;
  }

  /** What the buyer has and the wishes allow, sections that couple to each other together. */
  private List<List<OwnedHose>> alike() {
    Wishes wishes = job.wishes();
    List<List<OwnedHose>> groups = new ArrayList<>();
    for (OwnedHose owned : job.conditions().owned()) {
      boolean wished =
          wishes.allows(owned.sizeIn())
              && wishes.couplingSizeIn().orElse(owned.inlet().sizeIn()) == owned.inlet().sizeIn()
              && wishes.hoseThread().map(owned.inlet().family()::equals).orElse(true)
              && wishes.sectionFt().orElse(owned.lengthFt()) == owned.lengthFt();
      if (wished) {
        groups.stream()
            .filter(group -> group.get(0).goesWith(owned))
            .findFirst()
            .ifPresentOrElse(
                group -> group.add(owned), () -> groups.add(new ArrayList<>(List.of(owned))));
      }
    }
    return groups;
  }

  private HoseLine alone(List<OwnedHose> alike) {
    OwnedHose any = alike.get(0);
    return new HoseLine(
        "customer's own " + PlainNumber.of(any.sizeIn()),
        any.sizeIn(),
        any.inlet(),
        any.outlet(),
        new HoseLine.Bore(
            OptionalDouble.empty(),
            any.sizeIn(),
            WaveSpeeds.of(OptionalDouble.empty(), HoseType.UNKNOWN.word())),
        options(alike),
        new HoseLine.Finish("", FittedGaskets.atBoth(any.inlet(), any.outlet()), false));
  }

  /**
   * Sections sold are rated no higher than those the buyer has: who names weak hose is told so, and
   * not sold a line without it.
   */
  private HoseLine together(HoseLine bought, List<OwnedHose> alike) {
    Stream<SectionOption> sold =
        bought.options().stream().map(option -> option.ratedLike(ratings(alike)));
    return bought.withOptions(Stream.concat(options(alike).stream(), sold).toList());
  }

  private List<SectionOption> options(List<OwnedHose> alike) {
    return alike.stream()
        .map(
            owned ->
                new SectionOption(
                    Optional.empty(),
                    owned.lengthFt(),
                    "customer's own "
                        + PlainNumber.of(owned.lengthFt())
                        + " ft section of "
                        + PlainNumber.of(owned.sizeIn())
                        + " in hose",
                    Map.of(),
                    owned.lengthFt() * heaviestLbPerFt(owned.sizeIn()),
                    owned.rating(),
                    Optional.of(owned)))
        .toList();
  }

  /** What the buyer's hose weighs is not known: as much as the heaviest sold of its size. */
  private double heaviestLbPerFt(double sizeIn) {
    double heaviest = 0;
    for (Item item : catalogue.ofKind(ItemKind.HOSE)) {
      HoseFacts hose = item.hose().orElseThrow();
      if (hose.sizeIn() == sizeIn && hose.lengthFt().isPresent()) {
        heaviest = Math.max(heaviest, item.weightLb() / hose.lengthFt().getAsDouble());
      }
    }
    return heaviest;
  }

  private static List<Rating> ratings(List<OwnedHose> alike) {
    return alike.stream().map(OwnedHose::rating).toList();
  }
}
