package hosewright.paper.quote;

import hosewright.line.model.Joint;
import java.util.HashSet;
import java.util.Set;

/** Names parts in a table of joints: each item number once, where the part is first met. */
public final class PartNames {
  private final Set<String> told = new HashSet<>();

  public String of(Joint.Side side) {
    return !side.item().isEmpty() && told.add(side.item())
        ? side.part() + ", " + side.item()
        : side.part();
  }
}
