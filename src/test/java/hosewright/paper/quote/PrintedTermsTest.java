package hosewright.paper.quote;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.line.model.LinePlan;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What papers say below the lines of a quote of several groups. */
final class PrintedTermsTest {
  @Test
  void a_caution_of_several_groups_is_said_once_with_their_names() {
    LinePlan hydrant = SampleQuotes.hydrantLine().plan();
    LinePlan supply = SampleQuotes.supplyLine().plan();
    String ofTwo =
        hydrant.cautions().stream()
            .filter(sentence -> !supply.cautions().contains(sentence))
            .findFirst()
            .orElseThrow();
    List<String> said =
        PrintedTerms.cautions(
            inGroups(
                group(1, "First", hydrant),
                group(2, "Second", hydrant),
                group(3, "Third", supply)));
    assertThat(said).contains("First and Second: " + ofTwo).doesNotHaveDuplicates();
    assertThat(said.stream().filter(sentence -> sentence.endsWith(ofTwo))).hasSize(1);
  }

  @Test
  void a_caution_of_all_that_is_laid_is_said_without_a_name() {
    LinePlan hydrant = SampleQuotes.hydrantLine().plan();
    assertThat(
            PrintedTerms.cautions(
                inGroups(group(1, "First", hydrant), group(2, "Second", hydrant))))
        .containsAll(hydrant.cautions());
  }

  private static Group group(int number, String title, LinePlan plan) {
    return new Group(number, Group.Heading.of(title), "", plan);
  }

  private static Quote inGroups(Group... groups) {
    Quote one = SampleQuotes.hydrantLine();
    return new Quote(
        one.name(),
        one.status(),
        one.customer(),
        one.validity(),
        one.basis().with(List.of(groups)),
        one.offer(),
        one.totals());
  }
}
