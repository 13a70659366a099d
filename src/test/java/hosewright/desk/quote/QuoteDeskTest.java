package hosewright.desk.quote;

import static hosewright.desk.quote.QuotesAtTheDesk.draft;
import static hosewright.desk.quote.QuotesAtTheDesk.handLine;
import static hosewright.desk.quote.QuotesAtTheDesk.issue;
import static hosewright.desk.quote.QuotesAtTheDesk.issued;
import static hosewright.desk.quote.QuotesAtTheDesk.request;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.desk.OpenDesk;
import hosewright.desk.Papers;
import hosewright.desk.Revising.Revised;
import hosewright.desk.WrittenJob;
import hosewright.desk.quote.LineChange.Kind;
import hosewright.intake.RouteFile;
import hosewright.job.question.JobField;
import hosewright.paper.page.Paper;
import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import hosewright.quote.Quote;
import hosewright.quote.Quote.Status;
import hosewright.quote.QuoteLine;
import hosewright.quote.terms.Customers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A quote's life as the desk leads it, whatever the door. */
final class QuoteDeskTest {
  @TempDir private Path folder;
  private OpenDesk desk;

  @BeforeEach
  void open() {
    desk = new OpenDesk(folder.resolve("data"), "2026-11-02");
  }

  @Test
  void a_quote_carries_the_day_of_the_desk_and_the_text_of_its_job() {
    Quote quote = draft(desk);

    assertThat(quote.number()).isEqualTo("Q-000001");
    assertThat(quote.validity().date()).isEqualTo(LocalDate.parse("2026-11-02"));
    assertThat(quote.basis().jobYaml()).contains("Lantern Street hand line", "COUNTER");
    assertThat(new ReadHistory(desk).read("1").steps())
        .singleElement()
        .satisfies(logged -> assertThat(logged.step().by()).isEqualTo("ines"));
  }

  @Test
  void a_job_that_names_nobody_is_sold_over_the_counter() {
    Map<JobField, String> answers = handLine("COUNTER");
    answers.remove(JobField.CUSTOMER);

    Quote quote = new MakeQuote(desk).make(request(answers)).quote().orElseThrow();

    assertThat(quote.customer().id()).isEqualTo("COUNTER");
  }

  @Test
  void a_dealer_without_counter_sales_is_told_whom_a_quote_can_be_for() {
    assertThatThrownBy(() -> new Customers(List.of(), List.of()).counter())
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("customer");
  }

  @Test
  void a_job_without_a_safe_plan_is_answered_with_the_plan_and_no_quote() {
    Map<JobField, String> answers = handLine("COUNTER");
    answers.put(JobField.FLOW, "400 gpm");

    MakeQuote.Made made = new MakeQuote(desk).make(request(answers));

    assertThat(made.plan().feasible()).isFalse();
    assertThat(made.quote()).isEmpty();
    assertThat(new ListQuotes(desk).list()).isEmpty();
  }

  @Test
  void no_quote_is_made_or_issued_whose_papers_have_no_place() throws IOException {
    Papers taken = new Papers(List.of("csv"), Paper.LETTER, folder, false);
    Files.createFile(folder.resolve("Q-000001-r1.csv"));
    MakeQuote.Request asked =
        new MakeQuote.Request(
            WrittenJob.of(handLine("COUNTER")), Optional.of(taken), Optional.empty(), "ines");

    assertThatThrownBy(() -> new MakeQuote(desk).make(asked)).isInstanceOf(BadInputException.class);
    assertThat(new ListQuotes(desk).list()).isEmpty();

    IssueQuote.Request plain = issue(draft(desk).number());
    assertThatThrownBy(
            () ->
                new IssueQuote(desk)
                    .issue(
                        new IssueQuote.Request(
                            plain.number(),
                            plain.validity(),
                            plain.leadDays(),
                            plain.belowFloor(),
                            Optional.of(taken),
                            plain.by())))
        .isInstanceOf(BadInputException.class);
    assertThat(shown("1").status()).isEqualTo(Status.DRAFT);
  }

  @Test
  void papers_asked_for_with_a_quote_are_written_with_it() {
    Papers papers = new Papers(List.of("csv", "summary"), Paper.LETTER, folder, false);

    MakeQuote.Made made =
        new MakeQuote(desk)
            .make(
                new MakeQuote.Request(
                    WrittenJob.of(handLine("COUNTER")),
                    Optional.of(papers),
                    Optional.empty(),
                    "ines"));

    assertThat(made.files()).hasSize(2).allSatisfy(file -> assertThat(Path.of(file)).exists());
  }

  @Test
  void a_quote_keeps_the_whole_route_of_its_job_and_is_revised_from_that() throws IOException {
    Path survey = folder.resolve("survey.csv");
    Files.writeString(survey, "distance (ft),elevation (ft)\n0,40\n200,10\n400,44\n");
    Map<JobField, String> answers = handLine("COUNTER");
    answers.remove(JobField.LENGTH);
    answers.put(JobField.ROUTE, survey.toString());
    Quote quote =
        new MakeQuote(desk)
            .make(request(RouteFile.putInto(answers, Optional.empty())))
            .quote()
            .orElseThrow();
    Files.delete(survey);

    assertThat(quote.basis().jobYaml())
        .contains("route:\n  - 40 ft at 0 ft\n  - 10 ft at 200 ft\n  - 44 ft at 400 ft\n");
    Quote next = revise("1", Map.of(JobField.NEED, "60 psi"), Changes.NONE).quote();
    assertThat(next.plan().hydraulics().profile())
        .as("the hollow is still known")
        .anyMatch(at -> Math.abs(at.elevationFt() + 30) < 0.001);
    Quote straight = revise("1", Map.of(JobField.LENGTH, "400 ft"), Changes.NONE).quote();
    assertThat(straight.basis().jobYaml())
        .as("a length stands for the route from now on")
        .doesNotContain("route:");
  }

  @Test
  void a_revision_that_changes_nothing_is_refused_and_so_is_an_earlier_revision() {
    draft(desk);

    assertThatThrownBy(() -> revise("1", Map.of(), Changes.NONE))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("say what is to be different");
    revise("1", Map.of(), lines(new LineChange(Kind.QUANTITY, "1=12")));
    assertThatThrownBy(() -> revise("1-r1", Map.of(), lines(new LineChange(Kind.QUANTITY, "1=11"))))
        .isInstanceOf(ConflictException.class)
        .hasMessageContaining("the latest revision");
    assertThat(shown("1").revision()).isEqualTo(2);
  }

  @Test
  void a_line_left_out_is_added_anew_whatever_of_the_two_is_asked_first() {
    QuoteLine wrench = draft(desk).lines().get(4);

    Revised revised =
        revise(
            "1",
            Map.of(),
            lines(
                new LineChange(Kind.ADD, "3 x " + wrench.goods().item()),
                new LineChange(Kind.DROP, wrench.goods().item())));

    assertThat(revised.quote().lines())
        .filteredOn(line -> line.goods().item().equals(wrench.goods().item()))
        .extracting(QuoteLine::quantity)
        .containsExactly(3);
  }

  @Test
  void a_discount_taken_back_needs_no_reason_however_nothing_is_written() {
    draft(desk);

    Revised revised =
        revise(
            "1",
            Map.of(),
            lines(
                new LineChange(Kind.DISCOUNT, "1=0.0 %"),
                new LineChange(Kind.DISCOUNT, "2=0"),
                new LineChange(Kind.QUANTITY, "1=2")));

    assertThat(revised.quote().lines())
        .extracting(line -> line.price().discount())
        .containsOnly(Optional.empty());
  }

  @Test
  void everything_wrong_with_the_changes_is_said_at_once_and_no_revision_is_kept() {
    draft(desk);

    assertThatThrownBy(
            () ->
                revise(
                    "1",
                    Map.of(),
                    lines(
                        new LineChange(Kind.QUANTITY, "99=2"),
                        new LineChange(Kind.ADD, "0 x W-SPAN-1"),
                        new LineChange(Kind.DISCOUNT, "1=5%"))))
        .isInstanceOfSatisfying(
            BadInputException.class,
            refused ->
                assertThat(refused.problems())
                    .extracting(problem -> problem.field())
                    .containsExactly("add", "line", "discount-reason"));
    assertThat(shown("1").revision()).isEqualTo(1);
  }

  @Test
  void an_answer_left_empty_is_taken_out_of_the_job() {
    draft(desk);

    Revised revised = revise("1", Map.of(JobField.ACCESSORIES, ""), Changes.NONE);

    assertThat(revised.quote().basis().jobYaml()).doesNotContain("accessories");
    assertThat(revised.quote().total()).isLessThan(shown("1-r1").total());
  }

  @Test
  void a_quote_holds_to_its_last_day_and_is_expired_the_day_after() {
    String number = draft(desk).number();
    IssueQuote.Request usual = issue(number);
    IssueQuote.Issued issued =
        new IssueQuote(desk)
            .issue(
                new IssueQuote.Request(
                    number,
                    new IssueQuote.Validity(
                        OptionalInt.empty(), Optional.of(LocalDate.parse("2026-11-10"))),
                    OptionalInt.of(9),
                    true,
                    usual.papers(),
                    "ines"));
    assertThat(issued.quote().validity().leadDays()).isEqualTo(9);

    desk.on("2026-11-10");
    assertThat(shown(number).status()).isEqualTo(Status.ISSUED);
    desk.on("2026-11-11");

    assertThatThrownBy(() -> new AcceptQuote(desk).accept(number, Optional.empty(), "ines"))
        .isInstanceOf(ConflictException.class)
        .hasMessageContaining("is expired");
  }

  @Test
  void a_last_day_and_a_number_of_days_are_not_said_together_and_no_day_gone_by() {
    String number = draft(desk).number();

    assertThatThrownBy(
            () ->
                new IssueQuote.Validity(
                    OptionalInt.of(5), Optional.of(LocalDate.parse("2026-11-10"))))
        .isInstanceOf(BadInputException.class);
    assertThatThrownBy(
            () ->
                new IssueQuote(desk)
                    .issue(
                        new IssueQuote.Request(
                            number,
                            new IssueQuote.Validity(
                                OptionalInt.empty(), Optional.of(LocalDate.parse("2026-11-01"))),
                            OptionalInt.empty(),
                            true,
                            Optional.empty(),
                            "ines")))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("valid-until");
  }

  @Test
  void a_declined_quote_is_taken_up_again_at_its_prices() {
    String number = issued(desk).number();
    new DeclineQuote(desk).decline(number, "too slow", "ines");
    desk.on("2027-03-01");

    Revised reopened =
        new ReopenQuote(desk)
            .reopen(new FurtherRevision(number, "they came back", Optional.empty(), "ines"));

    assertThat(reopened.quote().status()).isEqualTo(Status.DRAFT);
    assertThat(reopened.quote().validity().date()).isEqualTo(LocalDate.parse("2027-03-01"));
    assertThat(reopened.quote().total()).isEqualTo(shown(number + "-r1").total());
    assertThat(new CompareQuotes(desk).compare(number, Optional.empty()).why())
        .isEqualTo("they came back");
  }

  @Test
  void what_was_granted_to_one_buyer_does_not_go_to_another_with_a_copy() {
    draft(desk);
    revise(
        "1",
        Map.of(),
        new Changes(
            List.of(new LineChange(Kind.DISCOUNT, "1=5%"), new LineChange(Kind.QUANTITY, "1=12")),
            Optional.of("first order"),
            Optional.empty(),
            List.of("Thank you, Ann."),
            Optional.empty()));

    Quote same = copy(Optional.empty());
    Quote other = copy(Optional.of("SKERRY-FARM"));

    assertThat(same.offer().amendments().discounts()).hasSize(1);
    assertThat(same.offer().amendments().notes()).containsExactly("Thank you, Ann.");
    assertThat(other.offer().amendments().discounts()).isEmpty();
    assertThat(other.offer().amendments().notes()).isEmpty();
    assertThat(other.lines().get(0).quantity()).isEqualTo(12);
  }

  @Test
  void the_desk_tells_what_a_quote_earns_only_where_it_is_asked_to() {
    draft(desk);

    assertThat(new ShowQuote(desk).show("1", Optional.empty(), false).internal()).isEmpty();
    assertThat(new ShowQuote(desk).show("1", Optional.empty(), true).internal()).isPresent();
  }

  @Test
  void nobody_signs_with_an_empty_name() {
    MakeQuote.Request asked = request(handLine("COUNTER"));

    assertThatThrownBy(
            () ->
                new MakeQuote(desk)
                    .make(
                        new MakeQuote.Request(asked.job(), asked.papers(), asked.termsFile(), " ")))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("by");
    assertThat(new ListQuotes(desk).list()).isEmpty();
  }

  private Revised revise(String number, Map<JobField, String> answers, Changes changes) {
    return new ReviseQuote(desk)
        .revise(new ReviseQuote.Request(number, "to be seen", answers, changes, "ines"))
        .revised()
        .orElseThrow();
  }

  private Quote copy(Optional<String> customer) {
    return new CopyQuote(desk)
        .copy(
            new CopyQuote.Request(
                "1", Optional.empty(), customer, Optional.empty(), Optional.empty(), "ines"));
  }

  private Quote shown(String number) {
    return new ShowQuote(desk).show(number, Optional.empty(), false).quote();
  }

  private static Changes lines(LineChange... changes) {
    return new Changes(
        List.of(changes), Optional.empty(), Optional.empty(), List.of(), Optional.empty());
  }
}
