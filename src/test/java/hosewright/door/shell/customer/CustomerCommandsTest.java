package hosewright.door.shell.customer;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.desk.OpenDesk;
import hosewright.door.shell.DemoBooks;
import hosewright.door.shell.catalogue.CatalogueLoadCommand;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Customers kept one by one; all are invented. */
final class CustomerCommandsTest {
  @TempDir private Path data;
  private CommandTrial shell;

  @BeforeEach
  void open() {
    OpenDesk.putDemoInto(data);
    shell =
        CommandTrial.of(
            data,
            trial -> {
              var books = DemoBooks.of(trial);
              return List.of(
                  new CatalogueLoadCommand(books, trial.notices()),
                  new CustomerAddCommand(books),
                  new CustomerListCommand(books),
                  new CustomerShowCommand(books));
            });
  }

  @Test
  void a_customer_keeps_every_term_and_outlives_a_load_of_the_customer_file() {
    Ended added =
        add(
            "MOSS",
            "--discount",
            "10%",
            "--exemption",
            "PH-EX-1",
            "--exemption-date",
            "2026-02-01",
            "--contract",
            "H175-DJ-50-15NH 165.00 from 2026-01-01 until 2026-06-30",
            "--contract",
            "H175-DJ-50-15NH 166.50 from 2026-07-01");
    shell.run("catalogue", "load", "catalogue");

    JsonNode kept = shell.run("customer", "show", "MOSS", "--json").json();

    assertThat(added.exitCode()).isZero();
    assertThat(kept.get("discount").asDouble()).isEqualTo(0.1);
    assertThat(kept.get("exemption").get("certificate").asString()).isEqualTo("PH-EX-1");
    assertThat(kept.get("contractPrices")).hasSize(2);
    assertThat(kept.get("contractPrices").get(1).get("unitPrice").asString())
        .isEqualTo("166.50 USD");
    assertThat(kept.get("contractPrices").get(1).get("inForce").asBoolean()).isTrue();
    assertThat(shell.run("customer", "list", "--json").json().get("customers")).hasSize(7);
  }

  @Test
  void the_margin_floor_of_a_class_is_for_the_dealer_s_own_eyes() {
    JsonNode plain = shell.run("customer", "show", "HARLOW-FD", "--json").json();
    JsonNode internal = shell.run("customer", "show", "HARLOW-FD", "--internal", "--json").json();

    assertThat(plain.get("marginFloor").isNull()).isTrue();
    assertThat(shell.run("customer", "show", "HARLOW-FD").out()).doesNotContain("floor");
    assertThat(internal.get("marginFloor").asDouble()).isEqualTo(0.15);
  }

  @Test
  void everything_wrong_with_a_customer_is_told_at_once_and_nothing_is_kept() {
    Ended ended =
        shell.run(
            "customer",
            "add",
            "--id",
            "MOSS CREW",
            "--name",
            "Mossgate Fire Crew",
            "--class",
            "agancy",
            "--discount",
            "10",
            "--tax-rate",
            "6.25%",
            "--exemption",
            "X-1",
            "--contract",
            "H175-DJ-50-15NX 165.00 from 2026-01-01",
            "--contract",
            "H175-DJ-50-15NH 165.005 from 2026-13-01");

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err())
        .contains("id cannot be 'MOSS CREW'")
        .contains("class cannot be 'agancy'")
        .contains("Did you mean 'agency'?")
        .contains("discount cannot be '10'")
        .contains("tax-name is missing")
        .contains("exemption-date is missing")
        .contains("Did you mean 'H175-DJ-50-15NH'?")
        .contains("0 or more USD with at most 2 decimals")
        .contains("2026-13-01");
    assertThat(shell.run("customer", "list", "--json").json().get("customers")).hasSize(6);
  }

  @Test
  void an_id_that_is_taken_needs_replace_and_one_that_is_not_refuses_it() {
    add("MOSS");

    assertThat(add("MOSS").err()).contains("--replace to change that customer");
    assertThat(add("moss").err()).contains("differs in more than its letters' case from MOSS");
    assertThat(add("MOSS", "--replace", "--discount", "5%").out()).startsWith("Changed MOSS");
    assertThat(add("MOST", "--replace").err()).contains("Did you mean 'MOSS'?");
    assertThat(shell.run("customer", "show", "MOSS", "--json").json().get("discount").asDouble())
        .isEqualTo(0.05);
  }

  @Test
  void two_contract_prices_for_one_item_on_one_day_are_refused() {
    Ended ended =
        add(
            "MOSS",
            "--contract",
            "H175-DJ-50-15NH 165.00 from 2026-01-01",
            "--contract",
            "H175-DJ-50-15NH 160.00 from 2026-03-01 until 2026-03-31");

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("two of them overlap");
  }

  private Ended add(String id, String... more) {
    return shell.run(
        Stream.of(
                Stream.of("customer", "add", "--id", id),
                Stream.of("--name", "Mossgate Fire Crew", "--class", "agency"),
                Stream.of(more))
            .flatMap(all -> all)
            .toArray(String[]::new));
  }
}
