package hosewright.desk.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import hosewright.desk.Books;
import hosewright.desk.OpenDesk;
import hosewright.desk.data.CheckBooks.Damaged;
import hosewright.desk.data.CheckBooks.Found;
import hosewright.desk.data.CheckBooks.Lost;
import hosewright.desk.data.CheckBooks.PassedOver;
import hosewright.desk.order.RaiseOrder;
import hosewright.desk.quote.AcceptQuote;
import hosewright.desk.quote.QuotesAtTheDesk;
import hosewright.store.backup.Backup;
import hosewright.store.database.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A look at damaged books says what the last backup would bring back, and what it would lose. */
final class CheckBooksTest {
  @TempDir private Path folder;
  private OpenDesk desk;
  private String first;

  @BeforeEach
  void keep_a_quote() {
    desk = OpenDesk.withDemo(folder);
    first = QuotesAtTheDesk.issued(desk).number();
  }

  @Test
  void a_damaged_quote_is_found_in_the_backup_as_it_was_last_written() {
    Path backup = backUp();
    damage("UPDATE QUOTE SET TOTAL = TOTAL + 1 WHERE QUOTE_NUMBER = 'Q-000001'");

    Found found = check();

    assertThat(found.damaged())
        .containsExactly(
            new Damaged(
                "quote",
                "Q-000001 revision 1",
                "does not read as it was written",
                "holds it as it was last written"));
    assertThat(found.backup().file()).isEqualTo(backup.toString());
    assertThat(found.backup().written()).isEqualTo("2026-11-02T12:00:00Z");
    assertThat(found.backup().lost()).isEmpty();
    assertThat(found.passedOver()).isEmpty();
  }

  @Test
  void what_changed_since_is_held_as_it_stood_and_what_came_since_is_not_held() {
    backUp();
    new AcceptQuote(desk).accept(first, Optional.of("their order 4711"), "ines");
    String order = new RaiseOrder(desk).raise(first, true, "ines").order().number();
    String later = QuotesAtTheDesk.draft(desk).number();
    damage("UPDATE QUOTE SET TOTAL = TOTAL + 1");
    damage("UPDATE PRICE SET UNIT_PRICE = UNIT_PRICE + 1 WHERE ITEM_NUMBER = 'W-SPAN-1'");

    Found found = check();

    assertThat(found.damaged())
        .filteredOn(one -> one.thing().equals("quote"))
        .extracting(Damaged::named, Damaged::inBackup)
        .containsExactly(
            tuple(first + " revision 1", "holds it as it stood then"),
            tuple(later + " revision 1", "does not hold it"));
    assertThat(found.damaged())
        .filteredOn(one -> one.thing().equals("price"))
        .isNotEmpty()
        .allSatisfy(one -> assertThat(one.inBackup()).isEqualTo("holds it as it was last written"));
    assertThat(lost(found, "customer order").gone()).containsExactly(order);
    assertThat(lost(found, "quote step").rows()).isPositive();
  }

  @Test
  void papers_that_came_or_changed_since_are_named() {
    backUp();
    new AcceptQuote(desk).accept(first, Optional.of("their order 4711"), "ines");
    String later = QuotesAtTheDesk.draft(desk).number();
    damage("UPDATE PRICE SET UNIT_PRICE = UNIT_PRICE + 1 WHERE ITEM_NUMBER = 'W-SPAN-1'");

    Lost quotes = lost(check(), "quote");

    assertThat(quotes.rows()).isEqualTo(2);
    assertThat(quotes.gone()).containsExactly(later + " revision 1");
    assertThat(quotes.goBack()).containsExactly(first + " revision 1");
  }

  @Test
  void a_quote_that_is_missing_is_found_by_its_number() {
    backUp();
    damage("DELETE FROM QUOTE_STEP");
    damage("DELETE FROM QUOTE");

    assertThat(check().damaged())
        .contains(new Damaged("quote", first, "is missing", "holds it up to revision 1"));
  }

  @Test
  void prices_that_are_missing_are_counted_in_the_backup() {
    backUp();
    damage("DELETE FROM PRICE WHERE ITEM_NUMBER = 'W-SPAN-1'");

    assertThat(check().damaged())
        .singleElement()
        .satisfies(
            one -> {
              assertThat(one.thing()).isEqualTo("price");
              assertThat(one.inBackup()).matches("holds [0-9,]+ of this kind");
            });
  }

  @Test
  void backups_that_are_cut_or_were_made_of_damaged_books_are_passed_over() throws IOException {
    Path good = backUp();
    damage("UPDATE QUOTE SET TOTAL = TOTAL + 1");
    Path backups = good.getParent();
    try (Database books = Database.openAsItIs(folder)) {
      new Backup(folder, "1.0", Instant.parse("2026-11-03T12:00:00Z"))
          .make(books.asItIs(), Optional.of(backups.resolve("20261103-120000-damaged.zip")));
      books.distrust();
    }
    byte[] whole = Files.readAllBytes(good);
    Files.write(backups.resolve("20261104-120000-cut.zip"), Arrays.copyOf(whole, whole.length / 2));

    Found found = check();

    assertThat(found.backup().file()).isEqualTo(good.toString());
    assertThat(found.passedOver())
        .extracting(PassedOver::why)
        .satisfiesExactly(
            cut -> assertThat(cut).contains("cut short"),
            damaged -> assertThat(damaged).contains("made of damaged books", "1 of its rows"));
  }

  @Test
  void without_a_backup_the_damage_is_told_all_the_same() {
    damage("UPDATE QUOTE SET TOTAL = TOTAL + 1");

    Found found = check();

    assertThat(found.damaged()).extracting(Damaged::inBackup).containsOnlyNulls();
    assertThat(found.backup()).isNull();
  }

  private Found check() {
    return new CheckBooks(desk.place()).check();
  }

  private static Lost lost(Found found, String thing) {
    return found.backup().lost().stream()
        .filter(one -> one.thing().equals(thing))
        .findFirst()
        .orElseThrow();
  }

  private Path backUp() {
    try (Books books = desk.get()) {
      return books.backUp(Optional.empty());
    }
  }

  private void damage(String statement) {
    try (Database books = Database.open(folder)) {
      books.context().execute(statement);
    }
  }
}
