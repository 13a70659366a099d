package hosewright.desk.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.desk.Books;
import hosewright.desk.OpenDesk;
import hosewright.paper.page.Paper;
import hosewright.problem.BadInputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The invented hose of Port Harlow at the demo catalogue's prices. */
final class BudgetFleetTest {
  @TempDir private Path folder;
  private OpenDesk books;
  private BudgetFleet budget;

  @BeforeEach
  void load() {
    books = OpenDesk.withDemo(folder);
    new LoadFleet(books).load(Path.of("catalogue/fleet"), Optional.empty(), false);
    budget = new BudgetFleet(books);
  }

  @Test
  void what_is_left_unsaid_is_ten_years_from_today_and_nothing_is_kept() {
    var made = budget.budget(asked(Map.of(), Optional.empty()));

    assertThat(made.budget().asked().from()).isEqualTo(LocalDate.parse("2026-11-02"));
    assertThat(made.budget().asked().years()).isEqualTo(10);
    assertThat(made.quote()).isEmpty();
    assertThat(made.workbook()).isEmpty();
  }

  @Test
  void the_first_year_is_quoted_under_a_number_for_the_customer_named() {
    var made = budget.budget(asked(Map.of(BudgetField.AGE_LIMIT, "10"), Optional.of("HARLOW-FD")));

    String number = made.quote().orElseThrow().number();
    try (Books open = books.get()) {
      assertThat(open.quotes().find(number)).isPresent();
    }
  }

  @Test
  void every_term_that_cannot_be_used_is_named_and_no_quote_is_made() {
    assertThatThrownBy(
            () ->
                budget.budget(
                    asked(
                        Map.of(
                            BudgetField.YEARS, "41",
                            BudgetField.FROM, "tomorrow",
                            BudgetField.PRICES, "-100%"),
                        Optional.of("HARLOW-FD"))))
        .hasMessageContaining("years cannot be '41': a whole number from 1 to 40")
        .hasMessageContaining("from cannot be 'tomorrow'")
        .hasMessageContaining("prices cannot be '-100%'");
  }

  @Test
  void no_quote_is_made_where_its_workbook_has_no_place() throws IOException {
    Files.createFile(folder.resolve("hose-budget-2026-11-02.xlsx"));
    BudgetFleet.Request asked =
        new BudgetFleet.Request(
            Map.of(BudgetField.AGE_LIMIT, "10"),
            Optional.empty(),
            Optional.of("HARLOW-FD"),
            "ines",
            Optional.of(new BudgetPapers(Paper.LETTER, folder, false)));

    assertThatThrownBy(() -> budget.budget(asked)).isInstanceOf(BadInputException.class);
    try (Books open = books.get()) {
      assertThat(open.quotes().list()).isEmpty();
    }
  }

  private static BudgetFleet.Request asked(
      Map<BudgetField, String> terms, Optional<String> quoteFor) {
    return new BudgetFleet.Request(terms, Optional.empty(), quoteFor, "ines", Optional.empty());
  }
}
