package hosewright.line.model;

import hosewright.thread.End;
import java.util.Optional;

/**
 * One thing in its place, or like sections of hose one after another.
 *
 * @param count like parts one after another
 * @param section what sections of hose are; empty for everything else
 * @param flow what the water meets in it
 */
public record Part(
    Role role,
    Owner owner,
    Goods goods,
    Ends ends,
    int count,
    Optional<Section> section,
    Flow flow) {

  /**
   * What is bought or brought.
   *
   * @param item item number; empty for what the buyer has and for what is still to be sourced
   * @param description what a person reads
   */
  public record Goods(Optional<String> item, String description) {}

  /**
   * How a part is turned.
   *
   * @param upstream the end that faces the source; empty on the source
   * @param downstream the end that faces the appliance; empty on the appliance
   */
  public record Ends(Optional<End> upstream, Optional<End> downstream) {}

  /**
   * A section of hose.
   *
   * @param lengthFt coupled length, ft
   * @param cutFt hose cut for it, ft, where it is made up on the bench; empty where it is there or
   *     bought coupled
   */
  public record Section(double lengthFt, Optional<Integer> cutFt) {}

  /**
   * What the water meets.
   *
   * @param waterwayIn bore of hose, else the smaller of the two nominal sizes, in
   * @param velocityFtPerS there, ft/s; 0 where nothing is calculated
   * @param lossPsi in all that are counted, psi
   */
  public record Flow(double waterwayIn, double velocityFtPerS, double lossPsi) {
    public static final Flow NONE = new Flow(0, 0, 0);
  }

  public Optional<String> item() {
    return goods.item();
  }

  public String description() {
    return goods.description();
  }

  public Optional<End> upstream() {
    return ends.upstream();
  }

  public Optional<End> downstream() {
    return ends.downstream();
  }

  public boolean isHose() {
    return role == Role.HOSE;
  }

  public boolean isBuyers() {
    return owner == Owner.BUYER;
  }

  /** Whether it is made up on the bench. */
  public boolean isMadeUp() {
    return section.flatMap(Section::cutFt).isPresent();
  }

  /** Whether its two ends are of unlike size. */
  public boolean changesSize() {
    return upstream().isPresent()
        && downstream().isPresent()
        && upstream().get().sizeIn() != downstream().get().sizeIn();
  }
}
