package hosewright.store.order;

import static hosewright.store.db.Tables.SUPPLIER_ANSWER;

import hosewright.order.SupplierAnswer;
import hosewright.store.database.Amounts;
import hosewright.store.database.Rows;
import hosewright.store.db.tables.records.SupplierAnswerRecord;
import java.time.OffsetDateTime;
import java.util.List;
import org.jooq.DSLContext;

/** Suppliers' answers as rows, and back. */
final class AnswerRows {
  private AnswerRows() {}

  static List<SupplierAnswer> of(DSLContext context, String quoteNumber) {
    return context
        .selectFrom(SUPPLIER_ANSWER)
        .where(SUPPLIER_ANSWER.QUOTE_NUMBER.eq(quoteNumber))
        .orderBy(SUPPLIER_ANSWER.WANTED, SUPPLIER_ANSWER.SUPPLIER_CODE)
        .fetch(
            row ->
                new SupplierAnswer(
                    row.getWanted(),
                    row.getQuantity(),
                    new SupplierAnswer.Offer(
                        row.getSupplierCode(),
                        Amounts.money(row.getUnitCost(), row.getCurrency()),
                        Amounts.money(row.getFreight(), row.getCurrency()),
                        row.getLeadDays(),
                        row.getRemark()),
                    row.getChosen(),
                    row.getReason()));
  }

  static void replace(
      DSLContext inside,
      String quoteNumber,
      List<SupplierAnswer> answers,
      OffsetDateTime at,
      String by) {
    inside
        .deleteFrom(SUPPLIER_ANSWER)
        .where(SUPPLIER_ANSWER.QUOTE_NUMBER.eq(quoteNumber))
        .and(
            SUPPLIER_ANSWER.WANTED.in(
                answers.stream().map(SupplierAnswer::wanted).distinct().toList()))
        .execute();
    Rows.insert(
        inside,
        SUPPLIER_ANSWER,
        answers.stream()
            .map(
                answer ->
                    new SupplierAnswerRecord(
                        quoteNumber,
                        answer.wanted(),
                        answer.offer().supplier(),
                        answer.quantity(),
                        answer.offer().unitCost().getAmount(),
                        answer.offer().freight().getAmount(),
                        answer.currency().getCode(),
                        answer.offer().leadDays(),
                        answer.offer().remark(),
                        answer.chosen(),
                        answer.reason(),
                        at,
                        by,
                        null))
            .toList());
  }
}
