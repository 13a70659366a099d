package hosewright.job.question;

import hosewright.catalogue.Rating;
import hosewright.csv.PlainNumber;
import hosewright.thread.End;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Sections of hose that the buyer has already.
 *
 * @param count how many alike
 * @param lengthFt coupled length of one, ft
 * @param sizeIn nominal hose size, in
 * @param inlet the end that faces the source when laid the usual way
 * @param outlet the other end
 * @param testPsi service test pressure they are known to hold, psi; empty when not stated
 */
public record OwnedHose(
    int count,
    double lengthFt,
    double sizeIn,
    End inlet,
    End outlet,
    OptionalDouble testPsi,
    Marks marks) {

  /** As they are written: {@code 4 x 50 ft 1.75 in 1.5 NH tested 250 psi marked fire}. */
  public String words() {
    StringBuilder words = new StringBuilder();
    words
        .append(count)
        .append(" x ")
        .append(PlainNumber.of(lengthFt))
        .append(" ft ")
        .append(PlainNumber.of(sizeIn))
        .append(" in ")
        .append(inlet.sizeAndFamily());
    testPsi.ifPresent(psi -> words.append(" tested ").append(PlainNumber.of(psi)).append(" psi"));
    words.append(marks.fire ? " marked fire" : "").append(marks.drinking ? " marked drinking" : "");
    return words.toString();
  }

  /** Another number of the same. */
  public OwnedHose times(int other) {
    return new OwnedHose(other, lengthFt, sizeIn, inlet, outlet, testPsi, marks);
  }

  /** What is known of the pressures they hold. */
  public Rating rating() {
    return new Rating(OptionalDouble.empty(), testPsi, List.of(), OptionalDouble.empty());
  }

  public boolean goesWith(OwnedHose other) {
    return goesWith(other.sizeIn, other.inlet, other.outlet);
  }

  /** Whether a section of these couples to hose of this size with these ends. */
  public boolean goesWith(double hoseSizeIn, End hoseInlet, End hoseOutlet) {
    return sizeIn == hoseSizeIn && alike(inlet, hoseInlet) && alike(outlet, hoseOutlet);
  }

  /** A fixed female and a swivel take the same male. */
  private static boolean alike(End one, End other) {
    return one.sizeIn() == other.sizeIn()
        && one.family().equals(other.family())
        && one.gender() == other.gender();
  }

  /**
   * What it is stated to be marked for.
   *
   * @param fire stated to be marked as fire hose
   * @param drinking stated to be marked for drinking water
   */
  public record Marks(boolean fire, boolean drinking) {}
}
