package hosewright.thread;

import hosewright.csv.PlainNumber;
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
    if (!(sizeIn > 0) || Double.isInfinite(sizeIn)) {
      throw new IllegalArgumentException("size must be above zero, not " + sizeIn);
    }
    if (swivel && gender != Gender.FEMALE) {
      throw new IllegalArgumentException("only a female swivels, not a " + gender);
    }
  }

  /**
   * The end that is meant by what was typed.
   *
   * <p>Size, family and gender may come in any order and any case. Sizes may be decimal, fractions
   * ({@code 2-1/2}, {@code 2½}) or nominal millimetres; threads per inch may follow the size
   * ({@code 2.5-7.5 NH}). Usual other names of a family are understood.
   *
   * @throws hosewright.problem.BadInputException with field {@code end} when it names no end that
   *     exists or could name two
   */
  public static End parse(String text) {
    return EndReader.read(text);
  }

  /**
   * Every search looks ends up again and again: this is several times sooner than the usual one.
   */
  @Override
  public int hashCode() {
    int hash = 31 * Double.hashCode(sizeIn) + family.hashCode();
    return 31 * (31 * hash + gender.ordinal()) + (swivel ? 1 : 0);
  }

  /** The half that this one is made to take: the same size, and fixed where that is a female. */
  public End opposite() {
    String other =
        Families.ofCode(family).map(family -> family.halves().counterpart()).orElse(family);
    Gender half =
        switch (gender) {
          case MALE -> Gender.FEMALE;
          case FEMALE -> Gender.MALE;
          case PLUG -> Gender.SOCKET;
          case SOCKET -> Gender.PLUG;
          case SEXLESS -> Gender.SEXLESS;
        };
    return new End(sizeIn, other, half, false);
  }

  /** Whether a gasket sits in this half: a female hose end, a cam socket, each sexless half. */
  public boolean carriesGasket() {
    boolean receives =
        gender == Gender.FEMALE || gender == Gender.SOCKET || gender == Gender.SEXLESS;
    return receives
        && Families.ofCode(family).map(family -> family.sealing().gasketedFemale()).orElse(false);
  }

  /** Whether it screws, unlike cam, sexless and push-in couplings. */
  public boolean threaded() {
    return Families.ofCode(family).map(Family::threaded).orElse(false);
  }

  /** Whether its family is made in this size and this half. */
  public boolean listed() {
    return Families.sizesIn(family).contains(sizeIn)
        && Families.ofCode(family).map(f -> f.halves().genders().contains(gender)).orElse(false);
  }

  /** Size and family without the half, for example {@code 2.5 NH}. */
  public String sizeAndFamily() {
    return sizeWritten() + " " + family;
  }

  /** The end as it is always written, for example {@code 1.5 NPSH female swivel}. */
  @Override
  public String toString() {
    return sizeAndFamily()
        + (gender == Gender.SEXLESS ? "" : " " + gender.word())
        + (swivel ? " swivel" : "");
  }

  /** Threads per inch follow the size only where the name alone could mean another thread. */
  private String sizeWritten() {
    String size = PlainNumber.of(sizeIn);
    if (ThreadTable.namesake(family, sizeIn).isEmpty()) {
      return size;
    }
    return ThreadTable.find(this)
        .filter(r -> r.threadsPerInch().isPresent())
        .map(r -> size + "-" + PlainNumber.of(r.threadsPerInch().getAsDouble()))
        .orElse(size);
  }
}
