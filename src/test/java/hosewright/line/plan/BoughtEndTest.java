package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.line.model.LinePlan;
import hosewright.line.model.Node;
import hosewright.line.model.Owner;
import hosewright.line.model.Part;
import hosewright.line.model.Role;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Who brings what stands at the end of a line: the dealer what is on the bill, no source. */
final class BoughtEndTest {

  @Test
  void a_nozzle_on_the_bill_is_the_dealers_and_stands_at_the_end_of_the_line() {
    LinePlan plan = line("accessories", "nozzle");

    Part end = end(plan);
    assertThat(end.owner()).isEqualTo(Owner.DEALER);
    assertThat(end.item()).isPresent();
    assertThat(plan.items()).extracting(item -> item.item()).contains(end.item().get());
  }

  @Test
  void a_nozzle_that_the_buyer_has_stays_the_buyers() {
    Part end = end(line("accessories", "shutoff"));

    assertThat(end.owner()).isEqualTo(Owner.BUYER);
    assertThat(end.item()).isEqualTo(Optional.empty());
  }

  private static LinePlan line(String field, String answer) {
    return DemoCatalogue.plan(
        "from",
        "2.5 NH male hydrant",
        "to",
        "1.5 NH female nozzle",
        "length",
        "100 ft",
        "size",
        "1.75 in",
        "section",
        "50 ft",
        "flow",
        "95 gpm",
        "need",
        "50 psi",
        "use",
        "fire",
        field,
        answer);
  }

  private static Part end(LinePlan plan) {
    return plan.layout().nodes().stream()
        .filter(node -> node.role() == Role.APPLIANCE)
        .map(Node::part)
        .findFirst()
        .orElseThrow();
  }
}
