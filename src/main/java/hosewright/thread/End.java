package hosewright.thread;

import java.util.Objects;

/**
 * One side of a connection: nominal size, family, gender and, for a female, whether it swivels.
 *
 * <p>The size is nominal, never measured: a 1.5 NH male measures 1.99 in over its threads.
 *
 * @param sizeIn nominal size in inches, above zero
 * @param family family code as in {@code families.csv}, for example NH, NPSH, NPT, GHT, Storz, cam
 * @param gender which half of the joint this is
 * @param swivel true when the end turns on its own; males never do
 */
public record End(double sizeIn, String family, Gender gender, boolean swivel) {

  public End {
    Objects.requireNonNull(family, "family");
    Objects.requireNonNull(gender, "gender");
    if (!(sizeIn > 0)) {
      throw new IllegalArgumentException("size must be above zero, not " + sizeIn);
    }
  }
}
