package hosewright.line.assembly;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.Rating;
import hosewright.line.model.Role;
import hosewright.thread.End;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A part in its place along a line that is being searched for.
 *
 * @param thing what is placed
 * @param upstream the end facing the source; empty on the source
 * @param downstream the end facing the appliance; empty on the appliance
 * @param count like parts one after another
 * @param lines how many times the part stands side by side: 1, or the number of parallel lines
 */
public record Placed(
    Role role,
    Thing thing,
    Optional<End> upstream,
    Optional<End> downstream,
    int count,
    int lines) {

  /**
   * What stands in a place.
   *
   * @param item the catalogue item, for sections made up on the bench their hose; empty for what
   *     the buyer owns and for parts still to be sourced
   * @param sections what sections of hose are; empty for everything else
   */
  public record Thing(
      Optional<Item> item, String description, Rating rating, Optional<Sections> sections) {

    static Thing named(String description) {
      return new Thing(Optional.empty(), description, Rating.NONE, Optional.empty());
    }
  }

  /** Sections of a make, and which of its lengths. */
  public record Sections(HoseLine hose, SectionOption option) {}

  static Placed source(String description, End end, int lines) {
    return new Placed(
        Role.SOURCE, Thing.named(description), Optional.empty(), Optional.of(end), 1, lines);
  }

  static Placed appliance(String description, End end, int lines) {
    return new Placed(
        Role.APPLIANCE, Thing.named(description), Optional.of(end), Optional.empty(), 1, lines);
  }

  public static Placed adapter(Bridge.Link link, int lines) {
    return fitting(Role.ADAPTER, link, lines);
  }

  /** What must stand in the line: it divides or joins it where it is made to, else is a device. */
  public static Placed inLine(Bridge.Link link, int lines) {
    return fitting(roleInLine(link.item().kind()), link, lines);
  }

  private static Role roleInLine(ItemKind kind) {
    return switch (kind) {
      case WYE -> Role.SPLIT;
      case SIAMESE -> Role.JOIN;
      case PUMP -> Role.PUMP;
      default -> Role.DEVICE;
    };
  }

  private static Placed fitting(Role role, Bridge.Link link, int lines) {
    Item item = link.item();
    return new Placed(
        role,
        new Thing(Optional.of(item), item.description(), item.rating(), Optional.empty()),
        Optional.of(link.upstream()),
        Optional.of(link.downstream()),
        1,
        lines);
  }

  /** A pump of the buyer's on the way. */
  public static Placed pump(String name, End intake, End discharge) {
    return new Placed(
        Role.PUMP, Thing.named(name), Optional.of(intake), Optional.of(discharge), 1, 1);
  }

  /** An adapter nobody stocks, named by its two ends and the pressure it must be rated for. */
  public static Placed toSource(End upstream, End downstream, OptionalDouble ratedPsi, int lines) {
    String rating =
        ratedPsi.isPresent()
            ? String.format(Locale.ROOT, ", rated %.0f psi or more", ratedPsi.getAsDouble())
            : "";
    return new Placed(
        Role.ADAPTER,
        Thing.named("adapter to be sourced: " + upstream + " x " + downstream + rating),
        Optional.of(upstream),
        Optional.of(downstream),
        1,
        lines);
  }

  static Placed sections(
      HoseLine hose, SectionOption option, boolean reversed, int count, int lines) {
    return new Placed(
        Role.HOSE,
        new Thing(
            option.item(),
            option.description(),
            option.rating(),
            Optional.of(new Sections(hose, option))),
        Optional.of(reversed ? hose.outlet() : hose.inlet()),
        Optional.of(reversed ? hose.inlet() : hose.outlet()),
        count,
        lines);
  }

  /** With nothing beside it. */
  public Placed alone() {
    return new Placed(role, thing, upstream, downstream, count, 1);
  }

  public Optional<Item> item() {
    return thing.item();
  }

  public String description() {
    return thing.description();
  }

  public Rating rating() {
    return thing.rating();
  }

  public boolean isHose() {
    return role == Role.HOSE;
  }

  /** The make that sections are of. */
  public HoseLine hose() {
    return thing.sections().orElseThrow().hose();
  }

  /** Coupled length of one section, ft. */
  public double lengthFt() {
    return thing.sections().orElseThrow().option().lengthFt();
  }

  /**
   * Narrowest bore of a fitting, in: the waterway a loss coefficient refers to. The item's own,
   * else the smaller of its two nominal sizes; that too on the way to a wider outlet of one with
   * outlets of unlike size, whose own is that of the narrowest.
   */
  public double waterwayIn() {
    double statedIn = Double.POSITIVE_INFINITY;
    if (item().isPresent() && !passesBesideTheNarrowest(item().get())) {
      statedIn = item().get().water().waterwayIn().orElse(statedIn);
    }
    return Math.min(smallestEndIn(), statedIn);
  }

  private boolean passesBesideTheNarrowest(Item thing) {
    return thing.ends().size() > 2
        && thing.ends().stream().anyMatch(end -> end.sizeIn() < smallestEndIn());
  }

  /** Smaller of the two nominal sizes of a fitting, in. */
  public double smallestEndIn() {
    return Math.min(upstream.orElseThrow().sizeIn(), downstream.orElseThrow().sizeIn());
  }

  /** Ends of a split or join that each take their share of the flow; 1 for any other part. */
  public int branches() {
    return role.divides() ? item().orElseThrow().ends().size() - 1 : 1;
  }

  /** How wide one side of what divides or joins the line is, in; its narrowest is its smallest. */
  public double portIn(End port) {
    return port.sizeIn() <= smallestEndIn() ? waterwayIn() : port.sizeIn();
  }

  /** Sections that the buyer has already. */
  public boolean isOwnedHose() {
    return isHose() && item().isEmpty();
  }

  public String itemNumber() {
    return item().map(Item::number).orElse("");
  }
}
