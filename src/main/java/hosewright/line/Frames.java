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
  private final List<List<Bridge.Link>> devices;

  Frames(Job job, Catalogue catalogue, Eligibility eligibility, Accessories accessories) {
    this.splitters =
        Stream.of(ItemKind.WYE, ItemKind.SIAMESE)
            .flatMap(kind -> catalogue.ofKind(kind).stream())
            .filter(eligibility::wetted)
            .toList();
    this.devices = devices(job, accessories);
  }

  /** Every way to choose one item for each device asked for, in the order asked. */
  private static List<List<Bridge.Link>> devices(Job job, Accessories accessories) {
    List<List<Bridge.Link>> chosen = List.of(List.of());
    for (String wanted : job.accessories()) {
      List<Item> items = accessories.inLine(wanted);
      if (!items.isEmpty()) {
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
    for (List<Bridge.Link> before : devices) {
      if (lines == 1) {
        frames.add(new Frame(hose, false, 1, before, List.of()));
        continue;
      }
      for (Bridge.Link wye : links(item -> Split.asWye(item, lines))) {
        for (Bridge.Link siamese : links(item -> Split.asSiamese(item, lines))) {
          frames.add(new Frame(hose, false, lines, with(before, wye), List.of(siamese)));
        }
      }
    }
    return frames;
  }

  private List<Bridge.Link> links(Function<Item, Optional<Bridge.Link>> asLink) {
    return splitters.stream().map(asLink).flatMap(Optional::stream).toList();
  }
}
