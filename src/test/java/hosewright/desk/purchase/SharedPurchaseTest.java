package hosewright.desk.purchase;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.desk.OpenDesk;
import hosewright.desk.purchase.AskedPurchase.AskedGroup;
import hosewright.intake.JobFile;
import hosewright.intake.JobText;
import hosewright.job.layout.LayoutText;
import hosewright.job.question.JobField;
import hosewright.line.model.Leg;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What several jobs of one purchase can have once only: the shelf, and the buyer's own hose. */
final class SharedPurchaseTest {
  private static final String HOSE = "H175-DJ-50-15NH";

  /** In stock of the demo catalogue: catalogue/items.csv. */
  private static final int ON_SHELF = 15;

  @TempDir private Path folder;
  private OpenDesk desk;

  @BeforeEach
  void open_a_desk() {
    desk = OpenDesk.withDemo(folder.resolve("books"));
  }

  private MakePurchase.Made make(AskedGroup... groups) {
    return new MakePurchase(desk, Optional.empty())
        .make(
            new MakePurchase.Request(
                new AskedPurchase(Optional.empty(), Optional.of("COUNTER"), List.of(groups)),
                Optional.empty(),
                Optional.empty(),
                "ines"));
  }

  private Quote made(AskedGroup... groups) {
    return make(groups).quote().orElseThrow();
  }

  /** Nine sections of 50 ft, with other answers: {@code stock-only=yes}. */
  private static AskedGroup handLine(String title, String... answers) {
    Map<JobField, String> job =
        new TreeMap<>(JobFile.read(Path.of("quotes/hydrant-to-nozzle.yaml")).answers());
    job.put(JobField.TITLE, title);
    Stream.of(answers)
        .map(answer -> answer.split("=", 2))
        .forEach(answer -> job.put(JobField.of(answer[0]).orElseThrow(), answer[1]));
    return AskedGroup.of(job);
  }

  private static int ofHose(Quote quote) {
    return quote.lines().stream()
        .filter(line -> line.goods().item().equals(HOSE))
        .mapToInt(line -> line.quantity())
        .sum();
  }

  private static int[] ownLaid(Quote quote) {
    return quote.groups().stream()
        .mapToInt(
            group ->
                group.count()
                    * group.plan().layout().legs().stream()
                        .map(Leg::ownSectionCounts)
                        .flatMap(List::stream)
                        .mapToInt(section -> section.count())
                        .sum())
        .toArray();
  }

  @Test
  void two_jobs_that_buy_from_stock_alone_never_take_more_than_lies_there() {
    assertThat(ofHose(made(handLine("First", "stock-only=yes")))).isEqualTo(9);
    Quote both = made(handLine("First", "stock-only=yes"), handLine("Second", "stock-only=yes"));
    assertThat(ofHose(both)).isLessThanOrEqualTo(ON_SHELF);
    assertThat(both.groups()).allMatch(group -> group.plan().feasible());
    both.lines().stream()
        .collect(
            java.util.stream.Collectors.groupingBy(
                line -> line.goods().item(),
                java.util.stream.Collectors.summingInt(line -> line.quantity())))
        .forEach(
            (item, count) -> {
              try (var open = desk.get()) {
                assertThat(open.catalogue().item(item).orElseThrow().stocking().onHand())
                    .as(item)
                    .isGreaterThanOrEqualTo(count);
              }
            });
  }

  @Test
  void a_job_bought_twice_takes_from_the_shelf_for_both() {
    AskedGroup one = handLine("Twice", "stock-only=yes");
    Quote twice = made(one.as("Twice", 2, false), AskedGroup.of("Parts", List.of("1 x W-HYD")));
    assertThat(ofHose(twice)).isLessThanOrEqualTo(ON_SHELF);
  }

  @Test
  void where_no_shelf_holds_enough_for_all_the_job_is_named_and_nothing_is_kept() {
    AskedGroup many =
        handLine("Many", "stock-only=yes", "size=1.75 in", "section=50 ft", "lines=1")
            .as("Many", 10, false);
    MakePurchase.Made made = make(many, AskedGroup.of("Parts", List.of("1 x W-HYD")));
    assertThat(made.quote()).isEmpty();
    assertThat(made.stuck().orElseThrow().title()).isEqualTo("Many");
  }

  @Test
  void two_jobs_never_lay_the_same_sections_that_the_buyer_has() {
    String owned = "owned=4 x 50 ft 1.75 in 1.5 NH tested 300 psi marked fire";
    assertThat(ownLaid(made(handLine("First", owned)))).containsExactly(4);
    MakePurchase.Made both = make(handLine("First", owned), handLine("Second", owned));
    Quote quote = both.quote().orElseThrow();
    assertThat(Arrays.stream(ownLaid(quote)).sum()).isEqualTo(4);
    assertThat(both.told()).singleElement().asString().contains("own 4 x 50 ft", "4 laid in");
    // The job kept says what it may lay, so that revising it takes no section twice.
    assertThat(
            quote.groups().stream()
                .map(group -> JobText.parse(group.jobYaml()).getOrDefault(JobField.OWNED, "")))
        .containsExactlyInAnyOrder("4 x 50 ft 1.75 in 1.5 NH tested 300 psi marked fire", "");
  }

  @Test
  void a_job_bought_twice_lays_half_of_the_buyers_sections_in_each() {
    AskedGroup one = handLine("Twice", "owned=4 x 50 ft 1.75 in 1.5 NH tested 300 psi marked fire");
    Quote twice = made(one.as("Twice", 2, false), AskedGroup.of("Parts", List.of("1 x W-HYD")));
    assertThat(ownLaid(twice)[0]).isEqualTo(4);
  }

  @Test
  void goods_of_two_groups_are_ready_at_once_only_where_the_shelf_has_both() {
    assertThat(made(AskedGroup.of("A", List.of("10 x " + HOSE))).validity().leadDays()).isZero();
    Quote both =
        made(
            AskedGroup.of("A", List.of("10 x " + HOSE)),
            AskedGroup.of("B", List.of("10 x " + HOSE)));
    assertThat(both.validity().leadDays()).isPositive();
  }

  @Test
  void legs_are_planned_in_a_package_as_a_line_is() {
    LayoutText legs = JobFile.read(Path.of("quotes/layouts/unlike-hand-lines.yaml")).layout();
    Quote quote = made(AskedGroup.of(legs), handLine("Hand line"));
    assertThat(quote.groups()).allMatch(Group::laid);
    assertThat(JobText.layout(quote.groups().get(0).jobYaml()).legs()).isEqualTo(legs.legs());
  }
}
