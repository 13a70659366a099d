package hosewright.line.explain;

import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Placed;
import hosewright.line.model.Role;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.List;

/** Tells what joins the hose to its ends, and what stands between hose and hose. */
final class WhyJoined {
  private static final String NOTHING = "nothing has to be adapted";

  private final List<String> told = new ArrayList<>();
  private final List<Placed> joining = new ArrayList<>();

  private WhyJoined() {}

  /** One sentence, source first. */
  static String sentence(Assembly line) {
    WhyJoined joined = new WhyJoined();
    boolean hoseSeen = false;
    for (Placed part : line.parts()) {
      if (part.role() != Role.HOSE) {
        joined.joining.add(part);
        continue;
      }
      if (!hoseSeen) {
        joined.tell("At the source ");
      } else if (!joined.joining.isEmpty()) {
        joined.tell("between hose and hose ");
      }
      hoseSeen = true;
    }
    joined.tell("at the appliance ");
    if (joined.told.stream().allMatch(one -> one.endsWith(NOTHING))) {
      return "Nothing has to be adapted at either end.";
    }
    return String.join("; ", joined.told) + ".";
  }

  private void tell(String where) {
    List<String> steps =
        joining.stream().filter(part -> part.role().isFitting()).map(WhyJoined::step).toList();
    told.add(where + (steps.isEmpty() ? NOTHING : String.join(", then ", steps)));
    joining.clear();
  }

  private static String step(Placed part) {
    if (part.role() != Role.ADAPTER) {
      return "stands " + part.itemNumber();
    }
    End upstream = part.upstream().orElseThrow();
    End downstream = part.downstream().orElseThrow();
    String from = upstream.sizeAndFamily();
    String to = downstream.sizeAndFamily();
    return (part.item().isEmpty() ? "an adapter to be sourced" : part.itemNumber())
        + (from.equals(to)
            ? " joins " + upstream.opposite() + " to " + downstream.opposite()
            : " takes " + from + " to " + to);
  }
}
