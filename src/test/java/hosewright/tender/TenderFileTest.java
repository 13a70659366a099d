package hosewright.tender;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.job.question.JobField;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

final class TenderFileTest {
  private static final String HEADER = "id,from,to,length,flow,need\n";
  private static final String JOB = ",2.5 NH male,1.5 NH female,400 ft,95 gpm,75 psi\n";

  private static List<TenderRow> rows(String text) {
    TenderFile.Survey survey = TenderFile.survey("jobs.csv", new StringReader(text));
    List<TenderRow> rows = new ArrayList<>();
    try (TenderFile file = TenderFile.rows("jobs.csv", new StringReader(text), survey)) {
      file.forEachRemaining(rows::add);
    }
    assertThat(rows).hasSize(survey.rows());
    return rows;
  }

  private static List<Problem> refusal(String text) {
    try {
      rows(text);
    } catch (BadInputException e) {
      return e.problems();
    }
    throw new AssertionError("not refused: " + text);
  }

  @Test
  void headings_are_read_in_any_case_with_other_words_and_with_the_unit_of_bare_numbers() {
    TenderRow row =
        rows("\uFEFFJob ID,Outlet,TO,Distance (ft),flow_gpm,Need [psi],Hose-Size,Section weight"
                + " (lb)\n"
                + "A1,2.5 NH male,1.5 NH female,400,95,5 bar,1.75 in,60\n")
            .get(0);
    assertThat(row.id()).isEqualTo("A1");
    assertThat(row.answers())
        .containsEntry(JobField.FROM, "2.5 NH male")
        .containsEntry(JobField.TO, "1.5 NH female")
        .containsEntry(JobField.LENGTH, "400 ft")
        .containsEntry(JobField.FLOW, "95 gpm")
        .containsEntry(JobField.NEED, "5 bar")
        .containsEntry(JobField.SIZE, "1.75 in")
        .containsEntry(JobField.SECTION_WEIGHT, "60 lb")
        .hasSize(7);
  }

  @Test
  void every_heading_that_is_unknown_twice_or_missing_is_named_at_once() {
    List<Problem> problems = refusal("id,from,to,lenght,flow (psi),flow,Flow wanted\n1,,,,,,\n");
    assertThat(problems)
        .extracting(Problem::value)
        .containsExactly("lenght", "flow (psi)", "Flow wanted", "", "");
    assertThat(problems.get(0).nearest()).isEqualTo("length");
    assertThat(problems.subList(3, 5))
        .extracting(Problem::field)
        .containsExactly("jobs.csv column length", "jobs.csv column need");
  }

  @Test
  void a_row_of_the_wrong_width_or_with_an_id_that_is_missing_or_taken_is_told_alone() {
    List<TenderRow> rows =
        rows(HEADER + "1" + JOB + "2,too,few\n" + JOB + "\n,,,,,\n" + "1" + JOB + "3" + JOB);
    assertThat(rows).extracting(TenderRow::line).containsExactly(2L, 3L, 4L, 7L, 8L);
    assertThat(rows)
        .extracting(row -> row.problems().stream().map(Problem::sentence).toList().toString())
        .containsExactly(
            "[]",
            "[line 3 cannot be '3 cells': 6 cells, as in the header; put text with a comma in"
                + " double quotes.]",
            "[id is missing: each job has an id of its own.]",
            "[id cannot be '1': each id stands once, and line 2 has it.]",
            "[]");
  }

  @Test
  void ids_that_only_share_a_hash_are_no_repeats() {
    assertThat("Aa").hasSameHashCodeAs("BB");
    assertThat(rows(HEADER + "Aa" + JOB + "BB" + JOB)).allMatch(row -> row.problems().isEmpty());
  }

  @Test
  void a_file_without_rows_or_that_is_no_csv_is_refused() {
    assertThat(refusal("").get(0).allowed()).contains("header line");
    assertThat(refusal(HEADER).get(0).allowed()).contains("at least one row");
    assertThatThrownBy(() -> rows(HEADER + "1,\"2.5 NH male,never closed"))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("double quote");
  }
}
