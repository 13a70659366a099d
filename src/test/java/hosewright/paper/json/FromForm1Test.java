package hosewright.paper.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import hosewright.line.model.Layout;
import hosewright.line.model.Node;
import hosewright.line.model.Part;
import hosewright.line.model.Role;
import hosewright.quote.Basis.TenderRow;
import hosewright.quote.Quote;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;

/** Quotes as the version before kept them: the documents it showed are those it kept. */
final class FromForm1Test {
  private static final String SHOWN = "/hosewright/kept/form1/shown.zip";

  private static String kept(int quote) throws IOException {
    try (InputStream resource = FromForm1Test.class.getResourceAsStream(SHOWN);
        ZipInputStream in = new ZipInputStream(resource)) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        if (entry.getName().equals("show-" + quote + ".json")) {
          return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
      }
    }
    throw new IOException("no quote " + quote);
  }

  private static Layout layout(int quote) throws IOException {
    return Json.readQuote(kept(quote)).plan().layout();
  }

  @Test
  void two_lines_from_one_outlet_divide_at_the_wye_and_meet_in_the_siamese() throws IOException {
    Layout layout = layout(9);
    assertThat(layout.nodes())
        .extracting(Node::role)
        .containsExactly(Role.SOURCE, Role.SPLIT, Role.JOIN, Role.APPLIANCE);
    assertThat(layout.legs()).extracting(leg -> leg.lines()).containsExactly(1, 2, 1);
    assertThat(layout.legs().get(1).parts())
        .extracting(Part::role)
        .containsExactly(Role.HOSE, Role.ADAPTER);
    assertThat(layout.abreast()).isEqualTo(2);
  }

  @Test
  void lines_from_two_outlets_meet_in_the_siamese() throws IOException {
    Layout layout = layout(10);
    assertThat(layout.outlets()).isEqualTo(2);
    assertThat(layout.nodes())
        .extracting(Node::role)
        .containsExactly(Role.SOURCE, Role.JOIN, Role.APPLIANCE);
  }

  @Test
  void hand_lines_behind_a_wye_have_a_nozzle_each() throws IOException {
    Layout layout = layout(7);
    assertThat(layout.appliances()).isEqualTo(2);
    assertThat(layout.branchLeg().orElseThrow().lines()).isEqualTo(2);
    assertThat(layout.devices()).extracting(Layout.StationDevice::item).contains("V-GATE-25NH");
  }

  @Test
  void the_buyers_own_sections_are_the_buyers_and_the_rest_are_made_up() throws IOException {
    Layout layout = layout(8);
    assertThat(layout.legs().get(0).sections())
        .extracting(Part::isBuyers, Part::isMadeUp, Part::count)
        .containsExactly(tuple(true, false, 4), tuple(false, true, 1));
  }

  @Test
  void a_quote_made_for_a_row_of_a_tender_still_says_which() throws IOException {
    String marked =
        kept(4)
            .replaceFirst(
                "\"jobYaml\" : \"",
                "\"jobYaml\" : \"# tender 0123456789abcdef begun 2026-11-02T10:00:00Z, line"
                    + " 12\\\\n");
    assertThat(Json.readQuote(marked).basis().tender())
        .contains(new TenderRow("0123456789abcdef", Instant.parse("2026-11-02T10:00:00Z"), 12));
    assertThat(Json.readQuote(kept(4)).basis().tender()).isEmpty();
  }

  @Test
  void what_was_raised_is_kept_in_the_new_form_and_read_as_it_is() throws IOException {
    for (int quote = 1; quote <= 13; quote++) {
      Quote raised = Json.readQuote(kept(quote));
      assertThat(Json.keep(raised)).startsWith("{\n  \"form\" : 2");
      assertThat(Json.readQuote(Json.keep(raised))).as("quote %d", quote).isEqualTo(raised);
    }
  }
}
