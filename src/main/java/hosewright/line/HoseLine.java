package hosewright.line;

import hosewright.catalogue.Rating;
import hosewright.thread.End;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Sections of one make that differ in length only, so that any of them couples to any other.
 *
 * @param series the catalogue's name for the make
 * @param sizeIn nominal hose size, in
 * @param inlet the end that faces the source when the line is laid the usual way
 * @param outlet the other end
 * @param frictionCoefficient the item's own C, if the catalogue gives one
 * @param boreIn bore to calculate with, in
 * @param rating the least of hose, couplings and attachments
 * @param options section lengths on offer, longest first
 * @param hoseMarkedTo the standard the hose is marked to
 */
record HoseLine(
    String series,
    double sizeIn,
    End inlet,
    End outlet,
    OptionalDouble frictionCoefficient,
    double boreIn,
    OptionalDouble waveSpeedFtPerS,
    Rating rating,
    List<SectionOption> options,
    String hoseMarkedTo,
    boolean gasketsFitted,
    boolean madeUp) {

  HoseLine {
    options = List.copyOf(options);
  }

  HoseLine withOptions(List<SectionOption> kept) {
    return new HoseLine(
        series,
        sizeIn,
        inlet,
        outlet,
        frictionCoefficient,
        boreIn,
        waveSpeedFtPerS,
        rating,
        kept,
        hoseMarkedTo,
        gasketsFitted,
        madeUp);
  }

  double couplingSizeIn() {
    return inlet.sizeIn();
  }

  /** Both ends in words; one where they are alike. */
  String couplings() {
    return isGendered() ? inlet + " x " + outlet : inlet.toString();
  }

  /** Whether turning the line around changes what it meets. */
  boolean isGendered() {
    return !inlet.equals(outlet);
  }
}
