package hosewright.line.assembly;

import hosewright.catalogue.Item;
import hosewright.thread.End;
import java.util.List;

/**
 * A chain of adapters between two ends that do not mate, in the order water meets them.
 *
 * @param links empty when the two ends mate as they are
 */
public record Bridge(List<Link> links) {

  public Bridge {
    links = List.copyOf(links);
  }

  /** An adapter, turned the way the water meets it. */
  public record Link(Item item, End upstream, End downstream) {}
}
