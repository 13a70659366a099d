package hosewright.line.plan;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.line.goods.Piece;
import hosewright.line.goods.Place;
import hosewright.line.model.Layout;
import hosewright.line.model.Node;
import hosewright.line.model.Owner;
import hosewright.line.model.Part;
import hosewright.line.model.Role;
import java.util.List;
import java.util.Optional;

/** Says of an appliance that it is the one that is bought, where one is: else the buyer has it. */
final class BoughtEnd {
  private BoughtEnd() {}

  /** A layout with the nozzles or monitors among some pieces at its ends. */
  static Layout of(Layout layout, List<Piece> pieces) {
    return new Layout(
        layout.nodes().stream()
            .map(
                node ->
                    node.role() == Role.APPLIANCE
                        ? new Node(node.name(), part(node, pieces), node.count())
                        : node)
            .toList(),
        layout.legs(),
        layout.joints(),
        layout.devices());
  }

  private static Part part(Node node, List<Piece> pieces) {
    Part part = node.part();
    return bought(node.count(), pieces)
        .map(
            item ->
                new Part(
                    part.role(),
                    Owner.DEALER,
                    new Part.Goods(Optional.of(item.number()), item.description()),
                    part.ends(),
                    part.count(),
                    part.section(),
                    part.flow()))
        .orElse(part);
  }

  /** What stands at every end; where some are bought and some are not, each has its own. */
  private static Optional<Item> bought(int ends, List<Piece> pieces) {
    return pieces.stream()
        .filter(piece -> piece.place() == Place.APPLIANCE && piece.count() >= ends)
        .flatMap(piece -> piece.item().stream())
        .filter(item -> item.kind() == ItemKind.NOZZLE || item.kind() == ItemKind.MONITOR)
        .findFirst();
  }
}
