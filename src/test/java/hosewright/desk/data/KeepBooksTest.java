package hosewright.desk.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.desk.OpenDesk;
import hosewright.desk.customer.AddCustomer;
import hosewright.desk.customer.CustomerField;
import hosewright.desk.customer.ListCustomers;
import hosewright.desk.customer.ListCustomers.ListedCustomer;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class KeepBooksTest {
  @TempDir private Path folder;
  @TempDir private Path away;

  @Test
  void a_backup_brings_back_what_stood_when_it_was_made() {
    OpenDesk books = OpenDesk.withDemo(folder);
    Path copy = away.resolve("monday.zip");
    new BackUpBooks(books).backUp(Optional.of(copy));
    new AddCustomer(books)
        .add(
            Map.of(
                CustomerField.ID, "MOSS-CREW",
                CustomerField.NAME, "Mossgate Fire Crew",
                CustomerField.CLASS, "agency"),
            List.of(),
            false);

    var restored = new RestoreBooks(books).restore(copy);

    assertThat(restored.before()).isNotNull();
    assertThat(new ListCustomers(books).list().customers())
        .isNotEmpty()
        .extracting(ListedCustomer::id)
        .doesNotContain("MOSS-CREW");
  }

  @Test
  void where_the_books_are_is_told_without_making_any() {
    Path unmade = folder.resolve("unmade");

    var where = new LocateBooks(OpenDesk.unused(unmade).place()).locate();

    assertThat(where.made()).isFalse();
    assertThat(where.folder()).isEqualTo(unmade.toString());
    assertThat(where.database()).isNull();
    assertThat(unmade).doesNotExist();
  }

  @Test
  void books_go_nowhere_while_no_server_is_named() {
    assertThatThrownBy(() -> new MoveBooks(OpenDesk.withDemo(folder).place()).move())
        .hasMessageContaining("say into which database");
  }
}
