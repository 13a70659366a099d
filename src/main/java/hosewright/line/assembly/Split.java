package hosewright.line.assembly;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.thread.End;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Fittings that turn one line into several and back: one end on one side, like ends on the other.
 */
public final class Split {
  private Split() {}

  /** The fitting as a wye for so many lines; empty when its ends do not allow it. */
  public static Optional<Bridge.Link> asWye(Item item, int lines) {
    return item.kind() == ItemKind.WYE
        ? single(item, lines).map(one -> new Bridge.Link(item, one, many(item, one)))
        : Optional.empty();
  }

  /** The fitting as a siamese for so many lines; empty when its ends do not allow it. */
  public static Optional<Bridge.Link> asSiamese(Item item, int lines) {
    return item.kind() == ItemKind.SIAMESE
        ? single(item, lines).map(one -> new Bridge.Link(item, many(item, one), one))
        : Optional.empty();
  }

  private static Optional<End> single(Item item, int lines) {
    List<End> ends = item.ends();
    if (ends.size() != lines + 1) {
      return Optional.empty();
    }
    if (Collections.frequency(ends, ends.get(0)) == ends.size()) {
      return Optional.of(ends.get(0));
    }
    return ends.stream()
        .filter(end -> Collections.frequency(ends, end) == 1)
        .filter(end -> Collections.frequency(ends, many(item, end)) == lines)
        .findFirst();
  }

  private static End many(Item item, End single) {
    return item.ends().stream().filter(end -> !end.equals(single)).findFirst().orElse(single);
  }
}
