package hosewright.line.assembly;

import hosewright.catalogue.HoseType;
import hosewright.catalogue.Item;
import hosewright.hydraulics.law.WaveSpeeds;
import hosewright.thread.End;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Sections of one make that differ in length only, so that any of them couples to any other.
 *
 * @param series the catalogue's name for the make
 * @param sizeIn nominal hose size, in
 * @param inlet the end that faces the source when the line is laid the usual way
 * @param outlet the other end
 * @param options section lengths on offer, in any order; kept longest first
 */
public record HoseLine(
    String series,
    double sizeIn,
    End inlet,
    End outlet,
    Bore bore,
    List<SectionOption> options,
    Finish finish) {

  public HoseLine {
    options =
        options.stream()
            .sorted(Comparator.comparingDouble(SectionOption::lengthFt).reversed())
            .toList();
  }

  public HoseLine withOptions(List<SectionOption> kept) {
    return new HoseLine(series, sizeIn, inlet, outlet, bore, kept, finish);
  }

  /** What it is made for; unknown of hose the buyer owns. */
  public HoseType type() {
    return options.stream()
        .flatMap(option -> option.item().stream())
        .map(Item::hoseType)
        .findFirst()
        .orElse(HoseType.UNKNOWN);
  }

  /** Whether a lay is this line's: with nothing made up it is one of hose bought coupled. */
  public boolean mayBe(Lay lay) {
    return !finish.madeUp() || sections(lay, option -> option.isMadeUp() || option.isOwned()) > 0;
  }

  /** How many sections of a lay are of a sort. */
  int sections(Lay lay, Predicate<SectionOption> sort) {
    int sections = 0;
    for (int i = 0; i < options.size(); i++) {
      sections += sort.test(options.get(i)) ? lay.counts().get(i) : 0;
    }
    return sections;
  }

  public double couplingSizeIn() {
    return inlet.sizeIn();
  }

  /**
   * What a spare section is bought as: as long as the longest laid, so that it can stand in for any
   * of them; where that length is not sold, the next longer, else the longest sold. Of like lengths
   * the one laid. Empty when none of this make is sold.
   */
  public Optional<SectionOption> spare(Lay lay) {
    double longestFt = longestLaidFt(lay);
    return IntStream.range(0, options.size())
        .boxed()
        .filter(i -> !options.get(i).isOwned())
        .min(
            Comparator.comparingDouble((Integer i) -> Math.max(0, longestFt - lengthFt(i)))
                .thenComparingDouble(this::lengthFt)
                .thenComparing(i -> lay.counts().get(i) == 0))
        .map(options::get);
  }

  private double lengthFt(int option) {
    return options.get(option).lengthFt();
  }

  /**
   * How many of the spare sections wanted must be bought: what the buyer owns, does not need for
   * the line and is as long as the longest laid is there already.
   */
  public int sparesToBuy(Lay lay, int lines, int wanted) {
    int leftOver = 0;
    for (int i = 0; i < options.size(); i++) {
      SectionOption option = options.get(i);
      if (option.isOwned() && option.lengthFt() >= longestLaidFt(lay)) {
        leftOver += option.most() - lay.counts().get(i) * lines;
      }
    }
    return Math.max(0, wanted - leftOver);
  }

  /** What a lay of several sections would cover without the shortest of them, ft; else nothing. */
  public double withoutShortestFt(Lay lay) {
    for (int i = options.size() - 1; i >= 0; i--) {
      if (lay.counts().get(i) > 0) {
        return lay.lengthFt() - lengthFt(i);
      }
    }
    return 0;
  }

  private double longestLaidFt(Lay lay) {
    for (int i = 0; i < options.size(); i++) {
      if (lay.counts().get(i) > 0) {
        return options.get(i).lengthFt();
      }
    }
    return 0;
  }

  /** How many of each option one of several lines side by side may be laid with. */
  public List<Integer> mostOfEach(int lines) {
    return options.stream().map(option -> option.most() / lines).toList();
  }

  /** Both ends in words; one where they are alike. */
  public String couplings() {
    return isGendered() ? inlet + " x " + outlet : inlet.toString();
  }

  /**
   * Whether a section laid comes with the gasket of one of its ends.
   *
   * @param end that end
   * @param first whether it is the one that water meets first
   */
  boolean bringsGasket(End end, boolean first) {
    boolean atInlet = isGendered() ? end.equals(inlet) : first;
    return atInlet ? finish.gaskets().atInlet() : finish.gaskets().atOutlet();
  }

  /** Whether turning the line around changes what it meets. */
  public boolean isGendered() {
    return !inlet.equals(outlet);
  }

  /**
   * What the water meets.
   *
   * @param frictionCoefficient the item's own C, if the catalogue gives one
   * @param boreIn bore to calculate with, in
   * @param waves how fast a pressure wave runs in it
   */
  public record Bore(OptionalDouble frictionCoefficient, double boreIn, WaveSpeeds waves) {}

  /**
   * How it is marked and made up.
   *
   * @param hoseMarkedTo the standard the hose is marked to
   * @param gaskets which of a section's ends come with theirs
   * @param madeUp whether sections are made up on the bench; some may still be bought coupled
   */
  public record Finish(String hoseMarkedTo, FittedGaskets gaskets, boolean madeUp) {}
}
