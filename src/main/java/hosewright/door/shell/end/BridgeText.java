package hosewright.door.shell.end;

import hosewright.desk.end.BridgeDocument;
import hosewright.desk.end.Bridged;
import hosewright.desk.end.FindBridge.Found;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import hosewright.thread.End;
import java.util.List;
import java.util.Locale;

/** A bridge as a person reads it at a terminal. */
final class BridgeText {
  private final End from;
  private final End to;
  private final Screen screen;
  private final Prose text;

  static String of(Found found, Screen screen) {
    BridgeText text = new BridgeText(found.from(), found.to(), screen);
    return found.stocked() ? text.stocked(found.bridged()) : text.sourced(found.bridged());
  }

  private BridgeText(End from, End to, Screen screen) {
    this.from = from;
    this.to = to;
    this.screen = screen;
    this.text = new Prose(screen);
  }

  private String stocked(Bridged found) {
    int adapters = found.chain().size();
    if (adapters == 0) {
      text.line(from + " and " + to + " join as they are: nothing goes between.");
    } else {
      text.line(
          "%s to %s: %s, %s."
              .formatted(
                  from, to, adapters == 1 ? "one adapter" : adapters + " adapters", found.cost()));
      text.block(chain(found.chain()));
      text.line(
          found.hold().workingPsi() == null
              ? "Its pressure rating is not known: a part has none in the catalogue."
              : String.format(
                  Locale.ROOT,
                  "Rated %.0f psi in cold water, the least of its parts.",
                  found.hold().workingPsi()));
    }
    text.block(joints(found.joints()));
    found.notes().forEach(text::line);
    others("Other ways, next best first", found.alternatives());
    return text.toString();
  }

  private String sourced(Bridged found) {
    text.line("NOTHING IN THE CATALOGUE joins " + from + " to " + to + ".");
    for (BridgeDocument.Wanted wanted : found.missing()) {
      text.line("To be sourced: one adapter, " + wanted.in() + " x " + wanted.out() + ".");
    }
    found.notes().forEach(text::line);
    boolean withStock = found.alternatives().stream().anyMatch(way -> !way.chain().isEmpty());
    others(
        withStock
            ? "Or, with a part out of the catalogue"
            : "Or two adapters of more usual threads",
        found.alternatives());
    return text.toString();
  }

  private String chain(List<BridgeDocument.Step> chain) {
    Table table = Table.of("item", "description", "water goes in at", "and out at");
    chain.forEach(step -> table.row(step.item(), step.description(), step.in(), step.out()));
    return table.on(screen);
  }

  private String joints(List<BridgeDocument.Joint> joints) {
    Table table = Table.of("joint", "into", "seal", "comes apart");
    for (BridgeDocument.Joint joint : joints) {
      table.row(
          joint.upstream(),
          joint.downstream(),
          joint.verdict().seal().name().toLowerCase(Locale.ROOT),
          joint.verdict().removable() ? "yes" : "no");
    }
    return table.on(screen);
  }

  private void others(String title, List<BridgeDocument> ways) {
    if (ways.isEmpty()) {
      return;
    }
    text.line("");
    text.line(title + ":");
    for (BridgeDocument way : ways) {
      text.line(
          "  ",
          "- %s: %s%s%s"
              .formatted(
                  way.inWords(),
                  way.cost() == null ? "price to be asked for" : way.cost(),
                  way.workingPsi() == null
                      ? ""
                      : String.format(Locale.ROOT, ", rated %.0f psi", way.workingPsi()),
                  way.permanentJoints().isEmpty() ? "" : ", with a permanent joint"));
    }
  }
}
