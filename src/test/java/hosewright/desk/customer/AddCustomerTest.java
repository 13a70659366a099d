package hosewright.desk.customer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.desk.OpenDesk;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An invented fire crew among the demo's customers. */
final class AddCustomerTest {
  private static final Map<CustomerField, String> MOSS =
      Map.of(
          CustomerField.ID, "MOSS-CREW",
          CustomerField.NAME, "Mossgate Fire Crew",
          CustomerField.CLASS, "agency");

  @TempDir private Path folder;
  private OpenDesk books;
  private AddCustomer add;

  @BeforeEach
  void open() {
    books = OpenDesk.withDemo(folder);
    add = new AddCustomer(books);
  }

  @Test
  void what_is_left_unsaid_is_no_discount_no_tax_and_freight_by_weight() {
    add.add(MOSS, List.of(), false);

    CustomerDocument kept = new ShowCustomer(books).show("MOSS-CREW", false);
    assertThat(kept.pricing().discount()).isEqualTo(BigDecimal.ZERO);
    assertThat(kept.taxation().taxRate()).isEqualTo(BigDecimal.ZERO);
    assertThat(kept.freightTerms()).isEqualTo("weight table");
    assertThat(kept.pricing().contractPrices()).isEmpty();
  }

  @Test
  void a_customer_without_id_name_or_class_is_not_kept() {
    assertThatThrownBy(() -> add.add(Map.of(), List.of(), false))
        .hasMessageContaining("id is missing")
        .hasMessageContaining("name is missing")
        .hasMessageContaining("class is missing");
  }

  @Test
  void a_customer_is_changed_only_where_that_was_asked_for() {
    add.add(MOSS, List.of(), false);

    assertThatThrownBy(() -> add.add(MOSS, List.of(), false))
        .hasMessageContaining("an id nobody has yet");
    assertThat(add.add(with(CustomerField.DISCOUNT, "10%"), List.of(), true).replaced()).isTrue();
    assertThat(new ShowCustomer(books).show("MOSS-CREW", false).pricing().discount())
        .isEqualByComparingTo("0.1");
  }

  @Test
  void one_wrong_term_keeps_the_customer_out_and_every_one_is_named() {
    assertThatThrownBy(
            () ->
                add.add(
                    with(CustomerField.TAX_RATE, "6%"),
                    List.of("H175-DJ-50-15NX 165.00 from 2026-01-01", "cheap"),
                    false))
        .hasMessageContaining("tax-name")
        .hasMessageContaining("Did you mean 'H175-DJ-50-15NH'?")
        .hasMessageContaining("contract cannot be 'cheap'");
    assertThat(new ListCustomers(books).list().customers())
        .extracting(ListCustomers.ListedCustomer::id)
        .doesNotContain("MOSS-CREW");
  }

  private static Map<CustomerField, String> with(CustomerField field, String text) {
    Map<CustomerField, String> said = new EnumMap<>(MOSS);
    said.put(field, text);
    return said;
  }
}
