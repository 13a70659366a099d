package hosewright.store.database;

import static hosewright.store.db.Tables.ITEM;
import static hosewright.store.db.Tables.QUOTE;
import static hosewright.store.db.Tables.QUOTE_VOID;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CatalogueFiles;
import hosewright.csv.CsvText;
import hosewright.problem.ConflictException;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.Signed;
import hosewright.quote.terms.CustomerFiles;
import hosewright.quote.terms.CustomerReader;
import hosewright.quote.terms.MarginFloors;
import hosewright.store.catalogue.CatalogueStore;
import hosewright.store.db.DefaultSchema;
import hosewright.store.quote.CustomerStore;
import hosewright.store.quote.SampleQuotes;
import hosewright.store.quote.StoredQuotes;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.jooq.exception.DataAccessException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the store of one machine to that of a team. */
final class MoveTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-02T10:00:00Z"), ZoneOffset.UTC);

  private static final Signed MADE = Signed.of(QuoteLife.Step.MAKE, "ines", CLOCK.instant(), "");

  @TempDir Path folder;
  @TempDir Path other;
  private Database from;
  private Database to;

  @BeforeEach
  void open() {
    to = BooksOn.SERVER.open(other);
    from = BooksOn.EMBEDDED.open(folder);
    Catalogue catalogue = new CatalogueFiles().read();
    new CatalogueStore(from).replace(catalogue, CLOCK.instant(), "");
    new CustomerStore(from)
        .replace(
            CustomerReader.readTables(
                CsvText.all(new CustomerFiles().readers()), catalogue, MarginFloors.NONE));
    quotes(from).saveNew(number -> SampleQuotes.quote(number, 1, "Quay line"), MADE);
    quotes(from).saveNew(number -> SampleQuotes.quote(number, 1, "Mole line, ½ in, 多"), MADE);
  }

  @AfterEach
  void close() {
    from.close();
    to.close();
  }

  @Test
  void every_row_of_every_table_arrives_and_numbers_go_on_where_they_were() {
    assertThat(Move.copy(from, to))
        .hasSameSizeAs(DefaultSchema.DEFAULT_SCHEMA.getTables())
        .contains(new Move.Copied("quote", 2), new Move.Copied("customer", 2));

    DefaultSchema.DEFAULT_SCHEMA
        .getTables()
        .forEach(
            table ->
                assertThat(to.context().selectFrom(table).fetch().intoMaps())
                    .as(table.getName())
                    .containsExactlyInAnyOrderElementsOf(
                        from.context().selectFrom(table).fetch().intoMaps()));
    assertThat(
            quotes(to).saveNew(number -> SampleQuotes.quote(number, 1, "Slip line"), MADE).number())
        .isEqualTo("Q-000003");
    assertThat(from.context().fetchCount(QUOTE)).isEqualTo(2);
  }

  @Test
  void a_number_lost_with_an_older_store_stays_lost_after_the_move() {
    from.marks().of(Series.QUOTE).raise(7);

    Move.copy(from, to);

    assertThat(
            quotes(to).saveNew(number -> SampleQuotes.quote(number, 1, "Slip line"), MADE).number())
        .isEqualTo("Q-000008");
    assertThat(to.context().fetchCount(QUOTE_VOID)).isEqualTo(5);
  }

  @Test
  void a_database_with_books_in_it_is_left_as_it_is() {
    quotes(to).saveNew(number -> SampleQuotes.quote(number, 1, "Slip line"), MADE);

    assertThatThrownBy(() -> Move.copy(from, to))
        .isInstanceOf(ConflictException.class)
        .hasMessageContaining("has books in it already");
    assertThat(to.context().fetchCount(ITEM)).isZero();
    assertThat(to.context().fetchCount(QUOTE)).isEqualTo(1);
  }

  @Test
  void a_move_that_fails_in_the_last_table_leaves_nothing_behind() {
    to.context().execute("ALTER TABLE QUOTE ADD CONSTRAINT CK_SHORT CHECK (TITLE = 'Quay line')");

    assertThatThrownBy(() -> Move.copy(from, to)).isInstanceOf(DataAccessException.class);

    assertThat(to.context().fetchCount(ITEM)).isZero();
    assertThat(
            quotes(to).saveNew(number -> SampleQuotes.quote(number, 1, "Quay line"), MADE).number())
        .isEqualTo("Q-000001");
  }

  private static StoredQuotes quotes(Database database) {
    return new StoredQuotes(database, SampleQuotes.CODEC, CLOCK);
  }
}
