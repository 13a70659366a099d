package hosewright.catalogue;

import hosewright.thread.End;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What an item is.
 *
 * @param ends its ends; on gaskets, wrenches and couplings the ends it fits or carries
 * @param gated whether each of the lines it divides or joins can be shut by itself
 * @param shutoff whether a nozzle has one of its own
 * @param channels hoses that cross side by side in a ramp
 * @param pump what a pump does; empty for all else, and where nobody says
 */
public record Form(
    ItemKind kind,
    Sort sort,
    List<End> ends,
    Stated gated,
    Stated shutoff,
    OptionalInt channels,
    Optional<PumpFacts> pump) {

  public Form {
    ends = List.copyOf(ends);
  }

  /** Anything but a pump. */
  public Form(
      ItemKind kind,
      Sort sort,
      List<End> ends,
      Stated gated,
      Stated shutoff,
      OptionalInt channels) {
    this(kind, sort, ends, gated, shutoff, channels, Optional.empty());
  }

  /** Of a kind and ends, and nothing else known. */
  public static Form of(ItemKind kind, List<End> ends) {
    return new Form(
        kind, Sort.unsaid(kind), ends, Stated.UNKNOWN, Stated.UNKNOWN, OptionalInt.empty());
  }
}
