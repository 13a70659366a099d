package hosewright.line.plan;

import hosewright.catalogue.Item;
import hosewright.job.Job;
import hosewright.job.question.Asked;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Placed;
import hosewright.line.goods.Accessories;
import hosewright.line.goods.Piece;
import hosewright.line.model.Accessory;
import hosewright.line.model.Role;
import hosewright.line.search.Evaluated;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says where everything asked for besides the line stands, and why. */
final class AccessoryWriter {
  private final Job job;
  private final Assembly line;

  private AccessoryWriter(Job job, Assembly line) {
    this.job = job;
    this.line = line;
  }

  static List<Accessory> of(Job job, Evaluated plan) {
    AccessoryWriter writer = new AccessoryWriter(job, plan.assembly());
    List<Accessory> written = new ArrayList<>();
    if (!job.accessories().isEmpty()) {
      writer.standing(written);
      plan.bill().pieces().forEach(piece -> written.add(writer.piece(piece)));
    }
    return written;
  }

  /** Devices in the line, and what divides or joins it where that was asked for. */
  private void standing(List<Accessory> written) {
    int hoses = 0;
    for (Placed part : line.parts()) {
      if (part.role() == Role.HOSE) {
        hoses++;
      }
      boolean divides = part.role().divides();
      boolean named =
          job.accessories().stream()
              .map(wanted -> Asked.of(wanted).what())
              .anyMatch(what -> part.item().map(Item::number).filter(what::equals).isPresent());
      if (part.role() == Role.DEVICE || divides && named) {
        written.add(device(part, hoses == 0));
      }
    }
  }

  private Accessory device(Placed part, boolean beforeHose) {
    Item item = part.item().orElseThrow();
    boolean behindHose =
        line.parts().subList(line.parts().indexOf(part), line.parts().size()).stream()
            .noneMatch(other -> other.role() == Role.HOSE);
    boolean between = !part.role().divides() && !beforeHose && !behindHose;
    String where =
        part.role() == Role.SPLIT
            ? "where the lines divide"
            : part.role() == Role.JOIN
                ? "where the lines join"
                : beforeHose
                    ? "at the source, before the hose"
                    : behindHose ? atAppliance(part.lines()) : "between sections of the hose";
    return new Accessory(
        item.number(),
        Optional.of(item.number()),
        item.description(),
        part.lines(),
        where,
        between ? "it was asked for at that place" : Accessories.why(item.sort()),
        Accessories.unsorted(item));
  }

  private Accessory piece(Piece piece) {
    if (piece.count() == 0) {
      return new Accessory(
          piece.asked(),
          Optional.empty(),
          piece.asked(),
          0,
          "none",
          "the couplings of this hose close by hand",
          Optional.empty());
    }
    return new Accessory(
        piece.asked(),
        piece.item().map(Item::number),
        piece.item().map(Item::description).orElse(piece.lacking()),
        piece.count(),
        where(piece),
        piece.item().map(item -> Accessories.why(item.sort())).orElse("it was asked for"),
        piece.care());
  }

  private String where(Piece piece) {
    return switch (piece.place()) {
      case SOURCE -> "at the source";
      case APPLIANCE -> atAppliance(job.appliances());
      case SPLIT, BESIDE -> "beside the line";
      case COUPLINGS -> "with the hose, for its couplings";
      case JOINTS -> "across the joints between sections";
      case ENDS -> "at the ends of the hose";
      case HYDRANT -> "at the hydrant";
      case CROSSING -> crossing(Asked.of(piece.asked()));
    };
  }

  private static String crossing(Asked asked) {
    int lanes = asked.lanes().orElse(1);
    String at =
        asked.stationFt().isPresent()
            ? " "
                + BigDecimal.valueOf(asked.stationFt().getAsDouble())
                    .stripTrailingZeros()
                    .toPlainString()
                + " ft along the hose"
            : "";
    return "over the hose where wheels cross it"
        + at
        + ", "
        + lanes
        + (lanes == 1 ? " lane" : " lanes");
  }

  private static String atAppliance(int lines) {
    return lines == 1 ? "at the end of the line" : "at the end of each of " + lines + " lines";
  }
}
