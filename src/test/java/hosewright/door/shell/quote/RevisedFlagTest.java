package hosewright.door.shell.quote;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.TradingDesk;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An answer that is yes or no, given to a revision as an option without a value. */
final class RevisedFlagTest {
  @Test
  void stock_only_given_to_a_revision_is_kept_in_its_job(@TempDir Path folder) {
    TradingDesk desk = new TradingDesk(folder.resolve("data"), "2026-11-02");
    String number = desk.quote("COUNTER");
    desk.done("quote", "revise", number, "--stock-only", "--reason", "they cannot wait");
    assertThat(desk.run("quote", "diff", number).out()).contains("stock-only", "yes");
  }
}
