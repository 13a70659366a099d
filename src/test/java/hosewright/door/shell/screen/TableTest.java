package hosewright.door.shell.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

final class TableTest {
  private final Table table =
      Table.of("Item", "Description", "Count", "Price")
          .numbers(2, 3)
          .row("H-1", "hose, lined, double jacket, coupled both ends", 9, "1,912.50 USD")
          .row("G-12", "gasket", 10, "4.00 USD");

  @Test
  void numbers_line_up_on_the_right() {
    assertThat(table.on(Screen.PIPED))
        .isEqualTo(
            """
            Item Description                                   Count        Price
            ---------------------------------------------------------------------
            H-1  hose, lined, double jacket, coupled both ends     9 1,912.50 USD
            G-12 gasket                                           10     4.00 USD\
            """);
  }

  @Test
  void long_text_wraps_inside_its_column_and_numbers_never_do() {
    String narrow = table.on(new Screen(50, false));
    assertThat(narrow.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(50));
    assertThat(narrow.lines()).filteredOn(line -> line.contains("1,912.50 USD")).hasSize(1);
    assertThat(narrow.lines()).hasSizeGreaterThan(4);
  }

  @Test
  void on_a_screen_too_narrow_for_columns_each_row_is_a_list() {
    assertThat(table.on(new Screen(40, false)))
        .isEqualTo(
            """
            Item: H-1
              Description: hose, lined, double
              jacket, coupled both ends; Count: 9;
              Price: 1,912.50 USD
            Item: G-12
              Description: gasket; Count: 10; Price:
              4.00 USD\
            """);
  }

  @Test
  void no_word_is_broken_where_there_is_room_for_it() {
    Table stock =
        Table.of("item", "description", "qty")
            .numbers(2)
            .row("H175-DJ-50-15NH", "Attack hose, double jacket, 1.75 in x 50 ft", 9);

    assertThat(stock.on(new Screen(45, false))).contains("H175-DJ-50-15NH");
  }

  @Test
  void a_row_must_have_a_cell_for_each_heading() {
    assertThatThrownBy(() -> table.row("H-2")).isInstanceOf(IllegalArgumentException.class);
  }
}
