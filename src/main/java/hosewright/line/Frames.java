package hosewright.line;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Every frame for a number of lines side by side, over given hose lines. */
final class Frames {
  private final List<Item> splitters;
  private final List<List<Bridge.Link>> atSource;
  private final List<List<Bridge.Link>> atAppliance;

  Frames(Job job, Catalogue catalogue, Eligibility eligibility, Accessories accessories) {
    this.splitters =
        Stream.of(ItemKind.WYE, ItemKind.SIAMESE)
            .flatMap(kind -> catalogue.ofKind(kind).stream())
            .filter(eligibility::wetted)
            .toList();
    this.atSource = devices(job, accessories, false);
    this.atAppliance = devices(job, accessories, true);
  }

  /** Every way to choose one item for each device asked for at an end, in the order asked. */
  private static List<List<Bridge.Link>> devices(
      Job job, Accessories accessories, boolean atAppliance) {
    List<List<Bridge.Link>> chosen = List.of(List.of());
    for (String wanted : job.accessories()) {
      List<Item> items = accessories.inLine(wanted);
      if (!items.isEmpty() && Asked.of(wanted).atAppliance() == atAppliance) {
        chosen =
            chosen.stream()
                .flatMap(before -> items.stream().map(item -> with(before, link(item))))
                .toList();
      }
    }
    return chosen;
  }

  /** Water enters a device by its first end. */
  private static Bridge.Link link(Item item) {
    return new Bridge.Link(item, item.ends().get(0), item.ends().get(1));
  }

  private static List<Bridge.Link> with(List<Bridge.Link> before, Bridge.Link last) {
    return Stream.concat(before.stream(), Stream.of(last)).toList();
  }

  List<Frame> of(List<HoseLine> hoses, int lines) {
    List<Frame> frames = new ArrayList<>();
    for (HoseLine hose : hoses) {
      for (Frame frame : around(hose, lines)) {
        frames.add(frame);
        if (hose.isGendered()) {
          frames.add(new Frame(hose, true, lines, frame.before(), frame.after()));
        }
      }
    }
    return frames;
  }

  private List<Frame> around(HoseLine hose, int lines) {
    List<Frame> frames = new ArrayList<>();
    for (List<Bridge.Link> before : atSource) {
      for (List<Bridge.Link> after : atAppliance) {
        addFrames(hose, lines, before, after, frames);
      }
    }
    return frames;
  }

  private void addFrames(
      HoseLine hose,
      int lines,
      List<Bridge.Link> before,
      List<Bridge.Link> after,
      List<Frame> frames) {
    if (lines == 1) {
      frames.add(new Frame(hose, false, 1, before, after));
      return;
    }
    for (Bridge.Link wye : links(item -> Split.asWye(item, lines))) {
      for (Bridge.Link siamese : links(item -> Split.asSiamese(item, lines))) {
        List<Bridge.Link> behind = new ArrayList<>(List.of(siamese));
        behind.addAll(after);
        frames.add(new Frame(hose, false, lines, with(before, wye), behind));
      }
    }
  }

  private List<Bridge.Link> links(Function<Item, Optional<Bridge.Link>> asLink) {
    return splitters.stream().map(asLink).flatMap(Optional::stream).toList();
  }
}
