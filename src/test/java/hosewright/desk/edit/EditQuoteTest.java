package hosewright.desk.edit;

import static hosewright.desk.quote.QuotesAtTheDesk.draft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.desk.OpenDesk;
import hosewright.desk.Revising.Revised;
import hosewright.desk.quote.ReviseQuote;
import hosewright.desk.quote.ShowQuote;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A quote edited as a small text. */
final class EditQuoteTest {
  @TempDir private Path folder;
  private OpenDesk desk;
  private Quote before;

  @BeforeEach
  void open_a_desk() {
    desk = OpenDesk.withDemo(folder);
    before = draft(desk);
  }

  private Quote edited(UnaryOperator<String> hand) {
    return new EditQuote(desk)
        .edit("1", text -> Optional.of(hand.apply(text)), "ines")
        .flatMap(ReviseQuote.Outcome::revised)
        .map(Revised::quote)
        .orElseThrow();
  }

  private static String because(String text) {
    return text.replace("\nreason:", "\nreason: they asked")
        .replace("price-reason:", "price-reason: a friend");
  }

  @Test
  void lines_are_changed_moved_dropped_added_and_headed() {
    Quote quote =
        edited(
            text -> {
              String first =
                  text.lines().filter(line -> line.startsWith("1 |")).findFirst().orElseThrow();
              String third =
                  text.lines().filter(line -> line.startsWith("3 |")).findFirst().orElseThrow();
              return because(
                  text.replace(third + "\n", "")
                          .replace(first + "\n", "")
                          .concat("== Hose\n1 | 12 | 150.00 | H175-DJ-50-15NH\n-- Coiled\n")
                      + "+ | 1 | 35.00 | Crating\n");
            });
    assertThat(quote.lines()).hasSize(before.lines().size());
    QuoteLine hose = quote.lines().get(quote.lines().size() - 2);
    assertThat(hose.quantity()).isEqualTo(12);
    assertThat(hose.price().unitPrice().getAmount()).isEqualByComparingTo("150");
    assertThat(quote.heading(hose)).contains("Hose");
    assertThat(hose.note().orElseThrow()).contains("Coiled");
    assertThat(quote.lines().get(quote.lines().size() - 1).goods().key()).isEqualTo("Crating");
  }

  @Test
  void what_is_not_allowed_comes_back_with_its_place_and_nothing_is_kept() {
    assertThatThrownBy(
            () -> edited(text -> because(text) + "99 | 1 | 1.00 | X\n1 | none | 1.00 | Y\n"))
        .hasMessageContaining("sheet line")
        .hasMessageContaining("99")
        .hasMessageContaining("none");
    assertThat(new ShowQuote(desk).show("1", Optional.empty(), false).quote()).isEqualTo(before);
  }

  @Test
  void a_text_left_as_it_is_makes_no_revision() {
    assertThat(new EditQuote(desk).edit("1", text -> Optional.empty(), "ines")).isEmpty();
  }
}
