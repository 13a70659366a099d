package hosewright.line;

import hosewright.catalogue.Item;
import hosewright.catalogue.Rating;
import hosewright.thread.End;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A part in its place along the line.
 *
 * @param item the catalogue item, for sections made up on the bench their hose; empty for what the
 *     buyer owns and for parts still to be sourced
 * @param upstream the end facing the source; empty on the source
 * @param downstream the end facing the appliance; empty on the appliance
 * @param count like parts one after another
 * @param lines how many times the part stands side by side: 1, or the number of parallel lines
 * @param hose the make that sections are of; empty for everything else
 */
record Placed(
    Role role,
    Optional<Item> item,
    String description,
    Optional<End> upstream,
    Optional<End> downstream,
    int count,
    int lines,
    Rating rating,
    Optional<HoseLine> hose,
    double lengthFt) {

  enum Role {
    SOURCE,
    ADAPTER,
    /** What must stand in the line: a wye, siamese, valve, meter or backflow preventer. */
    DEVICE,
    HOSE,
    APPLIANCE
  }

  static Placed source(String description, End end, int lines) {
    return new Placed(
        Role.SOURCE,
        Optional.empty(),
        description,
        Optional.empty(),
        Optional.of(end),
        1,
        lines,
        Rating.NONE,
        Optional.empty(),
        0);
  }

  static Placed appliance(String description, End end, int lines) {
    return new Placed(
        Role.APPLIANCE,
        Optional.empty(),
        description,
        Optional.of(end),
        Optional.empty(),
        1,
        lines,
        Rating.NONE,
        Optional.empty(),
        0);
  }

  static Placed adapter(Bridge.Link link, int lines) {
    return fitting(Role.ADAPTER, link, lines);
  }

  static Placed fitting(Role role, Bridge.Link link, int lines) {
    return new Placed(
        role,
        Optional.of(link.item()),
        link.item().description(),
        Optional.of(link.upstream()),
        Optional.of(link.downstream()),
        1,
        lines,
        link.item().rating(),
        Optional.empty(),
        0);
  }

  /** An adapter nobody stocks, named by its two ends and the pressure it must be rated for. */
  static Placed toSource(End upstream, End downstream, OptionalDouble ratedPsi, int lines) {
    String rating =
        ratedPsi.isPresent()
            ? String.format(Locale.ROOT, ", rated %.0f psi or more", ratedPsi.getAsDouble())
            : "";
    return new Placed(
        Role.ADAPTER,
        Optional.empty(),
        "adapter to be sourced: " + upstream + " x " + downstream + rating,
        Optional.of(upstream),
        Optional.of(downstream),
        1,
        lines,
        Rating.NONE,
        Optional.empty(),
        0);
  }

  static Placed sections(
      HoseLine hose, SectionOption option, boolean reversed, int count, int lines) {
    return new Placed(
        Role.HOSE,
        option.item(),
        option.description(),
        Optional.of(reversed ? hose.outlet() : hose.inlet()),
        Optional.of(reversed ? hose.inlet() : hose.outlet()),
        count,
        lines,
        option.rating(),
        Optional.of(hose),
        option.lengthFt());
  }

  /** This part with nothing beside it. */
  Placed alone() {
    return new Placed(
        role, item, description, upstream, downstream, count, 1, rating, hose, lengthFt);
  }

  /** Smaller of the two nominal sizes, in: the waterway a loss coefficient refers to. */
  double waterwayIn() {
    return Math.min(upstream.orElseThrow().sizeIn(), downstream.orElseThrow().sizeIn());
  }

  /** Sections that the buyer has already. */
  boolean isOwnedHose() {
    return role == Role.HOSE && item.isEmpty();
  }

  String itemNumber() {
    return item.map(Item::number).orElse("");
  }
}
