package hosewright.desk.tender;

import hosewright.intake.JobText;
import hosewright.job.question.JobField;
import hosewright.quote.Group;
import hosewright.tender.TenderPricing.Priced;
import hosewright.tender.TenderResult;
import java.util.List;
import java.util.Optional;

/**
 * A row that was worked on.
 *
 * @param sale what it sells, where it can be laid and a quote is wanted
 */
record RowDone(TenderResult result, Optional<Sale> sale) {

  /** A row of one job. */
  static RowDone of(Priced row) {
    String title = row.result().place().title();
    String id = row.result().place().id();
    return new RowDone(
        row.result(),
        row.plan()
            .map(
                plan ->
                    new Sale(
                        title,
                        row.customer().orElseThrow(),
                        row.date(),
                        List.of(
                            new Group(
                                Group.FIRST,
                                Group.Heading.of(
                                    row.answers().containsKey(JobField.TITLE) ? title : id),
                                JobText.write(row.answers()),
                                plan)),
                        List.of())));
  }
}
