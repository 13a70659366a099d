package hosewright.desk.purchase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.desk.OpenDesk;
import hosewright.desk.interview.Asker;
import hosewright.desk.purchase.AskedPurchase.AskedGroup;
import hosewright.desk.quote.ListQuotes;
import hosewright.intake.JobFile;
import hosewright.job.question.JobField;
import hosewright.problem.RefusalException;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several jobs and parts in one quote, on the demo catalogue. */
final class PurchaseDeskTest {
  private static final String HOSE = "H175-DJ-50-15NH";

  @TempDir private Path folder;
  private OpenDesk desk;

  @BeforeEach
  void open_a_desk() {
    desk = OpenDesk.withDemo(folder.resolve("books"));
  }

  private MakePurchase.Made make(Optional<Asker> asker, AskedGroup... groups) {
    return new MakePurchase(desk, asker)
        .make(
            new MakePurchase.Request(
                new AskedPurchase(Optional.empty(), Optional.of("COUNTER"), List.of(groups)),
                Optional.empty(),
                Optional.empty(),
                "ines"));
  }

  private Quote made(AskedGroup... groups) {
    return make(Optional.empty(), groups).quote().orElseThrow();
  }

  private static AskedGroup parts(String... lines) {
    return AskedGroup.of("Parts", List.of(lines));
  }

  private static Map<JobField, String> handLine() {
    return JobFile.read(Path.of("quotes/hydrant-to-nozzle.yaml")).answers();
  }

  private List<String> cautions(AskedGroup group) {
    return made(group).plan().cautions();
  }

  private void refuses(String word, AskedGroup... groups) {
    assertThatThrownBy(() -> made(groups))
        .isInstanceOf(RefusalException.class)
        .hasMessageContaining(word);
    assertThat(new ListQuotes(desk).list()).isEmpty();
  }

  @Test
  void parts_alone_are_quoted_at_the_break_of_their_number() {
    Quote quote = made(parts("20 x " + HOSE, "2 x W-SPAN-15-3"));
    assertThat(quote.lines()).extracting(line -> line.quantity()).containsExactly(20, 2);
    assertThat(quote.groups()).noneMatch(Group::laid);
    // Twenty reach the break from 12 in catalogue/prices.csv.
    assertThat(quote.lines().get(0).price().unitPrice())
        .isLessThan(made(parts("1 x " + HOSE)).lines().get(0).price().unitPrice());
  }

  @Test
  void an_item_named_twice_is_one_line() {
    assertThat(
            made(parts("20 x " + HOSE, "4 x " + HOSE.toLowerCase(java.util.Locale.ROOT))).lines())
        .extracting(line -> line.quantity())
        .containsExactly(24);
  }

  @Test
  void words_that_fit_one_item_are_that_item() {
    assertThat(made(parts("4 x nozzle 1.5 NH 150 gpm 100 psi")).lines().get(0).goods().item())
        .isEqualTo("N-FOG-15NH-150");
  }

  @Test
  void words_that_fit_several_items_are_refused_in_a_script_naming_them() {
    refuses("N-FOG-15NH-150L", parts("4 x nozzle 1.5 NH 150 gpm"));
  }

  @Test
  void a_person_is_asked_which_item_words_mean() {
    Deque<String> answers = new ArrayDeque<>(List.of("z", "b"));
    List<String> said = new ArrayList<>();
    Asker person =
        new Asker() {
          @Override
          public Optional<String> ask(String prompt, List<String> candidates) {
            return Optional.of(answers.remove());
          }

          @Override
          public void say(String text) {
            said.add(text);
          }
        };
    Quote quote =
        make(Optional.of(person), parts("4 x nozzle 1.5 NH 150 gpm")).quote().orElseThrow();
    assertThat(said.get(2)).contains(quote.lines().get(0).goods().item());
  }

  @Test
  void a_word_misspelt_beyond_doubt_is_never_bought_on_a_guess() {
    refuses("Crating", parts("1 x Crating"));
  }

  @Test
  void a_nozzle_that_does_not_couple_to_the_hose_beside_it_is_told() {
    assertThat(cautions(parts("4 x H25-DJ-50-25NH", "1 x N-FOG-15NH-150")))
        .singleElement()
        .asString()
        .contains("N-FOG-15NH-150 does not couple", "1.5 NH female swivel", "2.5 NH male");
  }

  @Test
  void a_nozzle_that_couples_to_hose_or_adapter_beside_it_is_not_told() {
    assertThat(cautions(parts("4 x " + HOSE, "1 x N-FOG-15NH-150"))).isEmpty();
    assertThat(cautions(parts("4 x H25-DJ-50-25NH", "1 x A-25NHF-15NHM", "1 x N-FOG-15NH-150")))
        .isEmpty();
  }

  @Test
  void jobs_and_parts_share_their_price_breaks_and_say_what_that_saves() {
    Quote quote = made(AskedGroup.of(handLine()), parts("10 x " + HOSE, "1 x Crating @ 35.00"));
    assertThat(quote.lines().stream().filter(line -> line.goods().item().equals(HOSE)))
        .extracting(line -> line.price().unitPrice())
        .containsOnly(made(parts("19 x " + HOSE)).lines().get(0).price().unitPrice());
    assertThat(quote.savedTogether().isPositive()).isTrue();
    assertThat(quote.lines().get(quote.lines().size() - 1).group()).isEqualTo(2);
  }

  @Test
  void two_like_jobs_bring_one_spare_gasket_of_a_kind_where_each_alone_brings_one() {
    Quote alone = made(AskedGroup.of(handLine()));
    Quote both = made(AskedGroup.of(handLine()), AskedGroup.of(handLine()));
    assertThat(gaskets(alone)).isEqualTo(2);
    // One of 2.5 NH for two joints; two of 1.5 NH for twenty.
    assertThat(gaskets(both)).isEqualTo(3);
  }

  private static int gaskets(Quote quote) {
    return quote.lines().stream()
        .filter(line -> line.goods().item().startsWith("G-"))
        .mapToInt(line -> line.quantity())
        .sum();
  }

  @Test
  void a_job_without_a_safe_plan_is_named_and_nothing_is_kept() {
    Map<JobField, String> weak = handLine();
    weak.put(JobField.SOURCE_PRESSURE, "20 psi");
    weak.put(JobField.TITLE, "Weak source");
    MakePurchase.Made made = make(Optional.empty(), AskedGroup.of(handLine()), AskedGroup.of(weak));
    assertThat(made.stuck().orElseThrow().title()).isEqualTo("Weak source");
    assertThat(made.quote()).isEmpty();
    assertThat(new ListQuotes(desk).list()).isEmpty();
  }

  @Test
  void a_group_without_lines_is_refused() {
    refuses("Compartment 3", AskedGroup.of("Compartment 3", List.of()));
  }

  @Test
  void a_package_file_is_read_with_counts_options_and_parts() throws Exception {
    Path file = folder.resolve("purchase.yaml");
    Files.copy(Path.of("quotes/hydrant-to-nozzle.yaml"), folder.resolve("job.yaml"));
    Files.writeString(
        file,
        """
        title: Fit-out
        jobs:
          - job: job.yaml
            title: Hand line
            count: 2
          - parts: [10 x %s]
            title: To spare
            optional: yes
        parts: [2 x W-SPAN-15-3]
        """
            .formatted(HOSE));
    AskedPurchase asked =
        new ReadPurchase()
            .read(
                new ReadPurchase.Sources(
                    Optional.of(file.toString()),
                    List.of(),
                    Optional.empty(),
                    List.of(),
                    List.of()),
                Optional.empty(),
                Optional.of("COUNTER"));
    Quote quote =
        new MakePurchase(desk, Optional.empty())
            .make(new MakePurchase.Request(asked, Optional.empty(), Optional.empty(), "ines"))
            .quote()
            .orElseThrow();
    assertThat(quote.basis().title()).isEqualTo("Fit-out");
    assertThat(quote.groups())
        .extracting(Group::title)
        .containsExactly("Hand line", "To spare", "Parts");
    assertThat(quote.lines().get(0).quantity()).isEqualTo(18);
    assertThat(quote.groups().get(1).optional()).isTrue();
  }

  @Test
  void everything_amiss_in_a_package_file_is_named_by_its_line() throws Exception {
    Path file = folder.resolve("purchase.yaml");
    Files.writeString(
        file, "title: Fit-out\njobs:\n  - job: job.yaml\n    count: 0\n  - titel: Nothing\n");
    assertThatThrownBy(
            () ->
                new ReadPurchase()
                    .read(
                        new ReadPurchase.Sources(
                            Optional.of(file.toString()),
                            List.of(),
                            Optional.empty(),
                            List.of(),
                            List.of()),
                        Optional.empty(),
                        Optional.empty()))
        .hasMessageContaining("line 4")
        .hasMessageContaining("line 5")
        .hasMessageContaining("title");
  }
}
