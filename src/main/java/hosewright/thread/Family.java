package hosewright.thread;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A thread or coupling family: what its ends are called and how they are made.
 *
 * @param code the short name that stands in a written end, for example NH or Storz
 * @param name the full name
 * @param kind how its halves hold each other
 * @param group national, pipe, iso, regional or coupling
 */
public record Family(
    String code,
    String name,
    FamilyKind kind,
    String group,
    Halves halves,
    Sealing sealing,
    Figures figures) {

  public boolean threaded() {
    return kind.threaded();
  }

  /** A thread of one city, province or district instead of a national standard. */
  public boolean regional() {
    return group.equals("regional");
  }

  /** The nominal sizes it is made in, inches, smallest first. */
  public List<Double> sizesIn() {
    return Families.sizesIn(code);
  }

  /**
   * The halves it has, and what they go by.
   *
   * @param genders the halves that exist; for a socket-only family just the female
   * @param counterpart the family code of the other half, nearly always its own
   * @param aliases other names in lower case, each with the gender it implies, if any
   */
  public record Halves(
      List<Gender> genders, String counterpart, Map<String, Optional<Gender>> aliases) {

    public Halves {
      genders = List.copyOf(genders);
      aliases = Map.copyOf(aliases);
    }
  }

  /**
   * What keeps its joints tight.
   *
   * @param seal what keeps its joints tight, in words
   * @param gasketedFemale whether the receiving half, or each sexless half, carries a gasket
   */
  public record Sealing(String seal, boolean gasketedFemale) {}

  /**
   * What is known of its measures.
   *
   * @param formAngleDeg the angle between thread flanks; empty for couplings
   * @param figuresHeld whether dimensions of its ends are held at all
   * @param source where these facts come from
   */
  public record Figures(OptionalDouble formAngleDeg, boolean figuresHeld, String source) {}
}
