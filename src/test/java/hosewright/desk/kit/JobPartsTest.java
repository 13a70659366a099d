package hosewright.desk.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.desk.OpenDesk;
import hosewright.desk.WrittenJob;
import hosewright.desk.line.PlanJob;
import hosewright.desk.purchase.AskedPurchase;
import hosewright.desk.purchase.AskedPurchase.AskedGroup;
import hosewright.desk.purchase.MakePurchase;
import hosewright.desk.quote.Changes;
import hosewright.desk.quote.MakeQuote;
import hosewright.desk.quote.ReviseQuote;
import hosewright.desk.quote.ShowQuote;
import hosewright.intake.JobFile;
import hosewright.intake.JobText;
import hosewright.job.layout.LayoutText;
import hosewright.job.question.JobField;
import hosewright.quote.Quote;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Parts and kits beside the line of a job file. */
final class JobPartsTest {
  private static final String BESIDE =
      "parts:\n  - 2 x W-STZ-25 per line\n  - 1 x Crating @ 35.00\nkit: engine-locker\n";

  @TempDir private Path folder;
  private OpenDesk desk;

  @BeforeEach
  void open_a_desk() {
    desk = OpenDesk.withDemo(folder.resolve("books"));
    kit("1 x W-SPAN-1 per 100 ft", "3 x W-HYD-RATCHET");
  }

  private void kit(String... lines) {
    new AddKit(desk).add(new AddKit.Request("engine-locker", List.of(lines), true));
  }

  private LayoutText handLineWith(String beside) throws IOException {
    Path file = folder.resolve("job.yaml");
    Files.writeString(
        file,
        Files.readString(Path.of("quotes/hydrant-to-nozzle.yaml"))
            + "\ncustomer: COUNTER\n"
            + beside);
    return JobFile.read(file).layout();
  }

  private Quote quoted(LayoutText job) {
    return new MakeQuote(desk)
        .make(new MakeQuote.Request(WrittenJob.of(job), Optional.empty(), Optional.empty(), "ines"))
        .quote()
        .orElseThrow();
  }

  private static int of(Quote quote, String item) {
    return quote.lines().stream()
        .filter(line -> line.goods().key().equals(item))
        .mapToInt(line -> line.quantity())
        .sum();
  }

  @Test
  void parts_and_kits_of_a_job_file_come_with_its_line() throws IOException {
    Quote quote = quoted(handLineWith(BESIDE));
    // One line of 9 sections of 50 ft: two, five for the 450 ft, three.
    assertThat(of(quote, "W-STZ-25")).isEqualTo(2);
    assertThat(of(quote, "W-SPAN-1")).isEqualTo(5);
    assertThat(of(quote, "W-HYD-RATCHET")).isEqualTo(3);
    assertThat(of(quote, "Crating")).isEqualTo(1);
    assertThat(of(quote, "H175-DJ-50-15NH")).isEqualTo(9);
  }

  @Test
  void a_plan_holds_the_parts_among_its_goods_and_in_its_total() throws IOException {
    LayoutText alone = handLineWith("");
    LayoutText with = handLineWith("parts: 2 x W-STZ-25\n");
    assertThat(
            new PlanJob(desk)
                .plan(WrittenJob.of(with))
                .total()
                .minus(new PlanJob(desk).plan(WrittenJob.of(alone)).total())
                .isPositive())
        .isTrue();
  }

  @Test
  void a_part_that_the_line_buys_as_well_is_one_line_at_the_break_of_both() throws IOException {
    Quote quote = quoted(handLineWith("parts: 11 x H175-DJ-50-15NH\n"));
    assertThat(of(quote, "H175-DJ-50-15NH")).isEqualTo(20);
    assertThat(quote.lines().stream().filter(l -> l.goods().item().startsWith("H175"))).hasSize(1);
  }

  @Test
  void a_changed_kit_changes_neither_a_kept_quote_nor_its_revision() throws IOException {
    Quote quote = quoted(handLineWith(BESIDE));
    kit("40 x W-SPAN-1");
    assertThat(new ShowQuote(desk).show("1", Optional.empty(), false).quote()).isEqualTo(quote);
    assertThat(of(longer(), "W-SPAN-1")).isEqualTo(7);
  }

  @Test
  void a_longer_line_brings_the_parts_it_is_counted_by() throws IOException {
    quoted(handLineWith(BESIDE));
    Quote longer = longer();
    // 630 ft with slack in 50 ft sections: 650 ft, seven hundreds begun.
    assertThat(of(longer, "W-SPAN-1")).isEqualTo(7);
    assertThat(of(longer, "W-STZ-25")).isEqualTo(2);
    assertThat(of(longer, "Crating")).isEqualTo(1);
  }

  private Quote longer() {
    return new ReviseQuote(desk)
        .revise(
            new ReviseQuote.Request(
                "1",
                "they lay further",
                Map.of(JobField.LENGTH, "600 ft", JobField.NEED, "50 psi"),
                Changes.NONE,
                "ines"))
        .revised()
        .orElseThrow()
        .quote();
  }

  @Test
  void in_a_package_each_job_counts_its_parts_by_its_own_line() throws IOException {
    LayoutText with = handLineWith("parts: 1 x W-SPAN-1 per 100 ft\n");
    LayoutText alone = handLineWith("");
    Quote quote =
        new MakePurchase(desk, Optional.empty())
            .make(
                new MakePurchase.Request(
                    new AskedPurchase(
                        Optional.empty(),
                        Optional.empty(),
                        List.of(AskedGroup.of(with), AskedGroup.of(alone))),
                    Optional.empty(),
                    Optional.empty(),
                    "ines"))
            .quote()
            .orElseThrow();
    assertThat(of(quote, "W-SPAN-1")).isEqualTo(5);
  }

  @Test
  void a_job_file_may_name_parts_and_no_line() throws IOException {
    Path file = folder.resolve("counter.yaml");
    Files.writeString(file, "title: Over the counter\ncustomer: COUNTER\nparts: 20 x W-HYD\n");
    AskedPurchase asked = AskedPurchase.ofParts(JobFile.read(file).layout());
    Quote quote =
        new MakePurchase(desk, Optional.empty())
            .make(new MakePurchase.Request(asked, Optional.empty(), Optional.empty(), "ines"))
            .quote()
            .orElseThrow();
    assertThat(of(quote, "W-HYD")).isEqualTo(20);
    assertThat(quote.basis().title()).isEqualTo("Over the counter");
  }

  @Test
  void an_unknown_kit_and_a_part_nobody_sells_are_refused_by_name() throws IOException {
    LayoutText unknownKit = handLineWith("kit: engine-lockre\n");
    assertThatThrownBy(() -> quoted(unknownKit)).hasMessageContaining("engine-locker");
    LayoutText unknownPart = handLineWith("parts: 2 x W-NIX\n");
    assertThatThrownBy(() -> quoted(unknownPart)).hasMessageContaining("W-NIX");
  }

  @Test
  void parts_are_written_into_a_job_file_as_they_are_read() throws IOException {
    LayoutText job = handLineWith(BESIDE);
    assertThat(JobText.layout(JobText.write(job))).isEqualTo(job);
  }
}
