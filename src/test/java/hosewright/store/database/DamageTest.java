package hosewright.store.database;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.DateTimeException;
import org.h2.api.ErrorCode;
import org.h2.mvstore.DataUtils;
import org.h2.mvstore.MVStoreException;
import org.jooq.ExecuteContext;
import org.jooq.ExecuteType;
import org.junit.jupiter.api.Test;

final class DamageTest {
  private final Damage damage = new Damage(Path.of("books"));

  @Test
  void a_value_that_its_type_does_not_have_is_damage_and_not_our_fault() {
    SQLException unreadable =
        new SQLException(
            "Error while reading field: \"QUOTE\".\"MADE_AT\", at JDBC index: 11",
            new DateTimeException("Invalid value for EpochDay"));

    assertThat(damage.of(unreadable))
        .hasValueSatisfying(told -> assertThat(told).hasMessageContaining("data check"));
  }

  /** As six of five hundred stores with four flipped bits answered; seed 284 was the first. */
  @Test
  void a_value_of_another_type_than_its_column_is_damage_too() {
    SQLException converted =
        new SQLException(
            "Data conversion error converting \"CHARACTER VARYING to DECFLOAT\"",
            "22018",
            ErrorCode.DATA_CONVERSION_ERROR_1);

    assertThat(damage.of(converted))
        .hasValueSatisfying(told -> assertThat(told).hasMessageContaining("data check"));
  }

  /** As store 442 of five hundred answered that a kill had left. */
  @Test
  void a_value_taken_for_one_of_another_type_is_damage_where_it_is_read_and_not_where_we_write() {
    assertThat(told(ExecuteType.READ, misread())).isInstanceOf(DamagedStoreException.class);
    assertThat(told(ExecuteType.WRITE, misread())).isNull();
  }

  private static SQLException misread() {
    return new SQLException(
        "Cannot parse \"TIME\" constant", "22007", ErrorCode.INVALID_DATETIME_CONSTANT_2);
  }

  /** What a failed statement is told as; null where it is left as it was. */
  private RuntimeException told(ExecuteType type, SQLException failure) {
    RuntimeException[] told = new RuntimeException[1];
    ExecuteContext executed =
        (ExecuteContext)
            Proxy.newProxyInstance(
                ExecuteContext.class.getClassLoader(),
                new Class<?>[] {ExecuteContext.class},
                (proxy, method, given) ->
                    switch (method.getName()) {
                      case "sqlException" -> failure;
                      case "type" -> type;
                      case "exception" -> told[0] = (RuntimeException) given[0];
                      default -> throw new UnsupportedOperationException(method.getName());
                    });
    damage.exception(executed);
    return told[0];
  }

  @Test
  void a_file_that_cannot_be_written_is_trouble_with_the_disk_and_no_damage() {
    SQLException failed =
        new SQLException(
            "General error",
            new MVStoreException(DataUtils.ERROR_WRITING_FAILED, "Writing to store.mv.db failed"));

    assertThat(damage.of(failed)).isEmpty();
    assertThat(StoreTrouble.of(failed, "data folder books"))
        .hasValueSatisfying(told -> assertThat(told).hasMessageContaining("no room left"));
  }

  @Test
  void a_statement_that_fails_for_another_reason_is_none() {
    assertThat(damage.of(new SQLException("Deadlock", "40001", 40001))).isEmpty();
  }
}
