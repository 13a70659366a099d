package hosewright.desk.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.desk.OpenDesk;
import hosewright.desk.kit.KitPart.Laid;
import hosewright.desk.purchase.AskedPurchase;
import hosewright.desk.purchase.AskedPurchase.AskedGroup;
import hosewright.desk.purchase.MakePurchase;
import hosewright.desk.quote.ListQuotes;
import hosewright.desk.quote.ShowQuote;
import hosewright.intake.JobFile;
import hosewright.problem.BadInputException;
import hosewright.problem.NoSuchThingException;
import hosewright.quote.Quote;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Parts lists under a name. */
final class KitTest {
  @TempDir private Path folder;
  private OpenDesk desk;

  @BeforeEach
  void open_a_desk() {
    desk = OpenDesk.withDemo(folder);
  }

  private void keep(boolean overwrite, String... lines) {
    new AddKit(desk).add(new AddKit.Request("Engine locker", List.of(lines), overwrite));
  }

  private Quote quoted(AskedGroup... groups) {
    return new MakePurchase(desk, Optional.empty())
        .make(
            new MakePurchase.Request(
                new AskedPurchase(Optional.empty(), Optional.of("COUNTER"), List.of(groups)),
                Optional.empty(),
                Optional.empty(),
                "ines"))
        .quote()
        .orElseThrow();
  }

  @Test
  void a_part_is_counted_once_by_line_or_by_each_length_begun() {
    Laid laid = new Laid(450, 3);
    assertThat(KitPart.of("2 x W-SPAN-15-3").forLaid(laid)).containsExactly("2 x W-SPAN-15-3");
    assertThat(KitPart.of("2 x W-SPAN-15-3 per line").forLaid(laid))
        .containsExactly("6 x W-SPAN-15-3");
    assertThat(KitPart.of("1 x R-20 per 100 ft").forLaid(laid)).containsExactly("5 x R-20");
    assertThat(KitPart.of("2 x W-SPAN-15-3 per line").forLaid(Laid.NOTHING)).isEmpty();
  }

  @Test
  void a_kit_counts_by_the_hose_its_purchase_lays_and_a_changed_kit_changes_no_quote() {
    keep(false, "2 x W-HYD per line", "1 x W-STZ-25 per 100 ft", "1 x W-SPAN-1");
    AskedGroup handLine =
        AskedGroup.of(JobFile.read(Path.of("quotes/hydrant-to-nozzle.yaml")).answers());
    Quote quote = quoted(handLine, AskedGroup.ofKit("engine-locker"));
    // One line of 9 sections of 50 ft: two spanners, five for the 450 ft, one.
    assertThat(quote.lines(quote.groups().get(1)))
        .extracting(line -> line.quantity())
        .containsExactly(2, 5, 1);

    keep(true, "40 x W-HYD");
    assertThat(new ShowQuote(desk).show("1", Optional.empty(), false).quote()).isEqualTo(quote);
  }

  @Test
  void an_unknown_kit_a_taken_name_and_a_part_nobody_sells_are_refused() {
    keep(false, "1 x W-HYD");
    assertThatThrownBy(() -> keep(false, "2 x W-HYD")).isInstanceOf(BadInputException.class);
    assertThatThrownBy(() -> quoted(AskedGroup.ofKit("engine-lockre")))
        .isInstanceOf(NoSuchThingException.class)
        .hasMessageContaining("engine-locker");
    assertThat(new ListQuotes(desk).list()).isEmpty();
    assertThatThrownBy(
            () -> new AddKit(desk).add(new AddKit.Request("other", List.of("1 x W-NIX"), false)))
        .hasMessageContaining("W-NIX");
    assertThat(new ShowKits(desk).show(Optional.empty())).hasSize(1);
  }

  @Test
  void a_file_that_is_no_kit_hides_no_other_and_a_marked_one_is_named_with_its_line()
      throws IOException {
    keep(false, "1 x W-HYD");
    Files.writeString(folder.resolve("kits/\u001b[2J.txt"), "1 x W-HYD");
    Files.writeString(folder.resolve("kits/Notes.txt"), "call the mill");
    assertThat(new ShowKits(desk).show(Optional.empty()))
        .extracting(kit -> kit.name())
        .containsExactly("engine-locker");

    Files.writeString(folder.resolve("kits/marked.txt"), "# ours\n1 x W-\u202eHYD\n");
    assertThatThrownBy(() -> new ShowKits(desk).show(Optional.of("marked")))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("line 2 of kit marked")
        .hasMessageContaining("{U+202E}");
  }

  @Test
  void a_kit_that_could_not_be_read_again_is_not_kept() {
    String[] many = new String[101];
    Arrays.fill(many, "1 x W-HYD");
    assertThatThrownBy(() -> keep(false, many))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("at most 100 lines");
    assertThat(folder.resolve("kits")).doesNotExist();
  }
}
