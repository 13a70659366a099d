package hosewright.door.shell.end;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The register of local threads; districts are invented. */
final class EndLocalCommandTest {
  private static final String HEADER = "district,size,family,checked_on,checked_by\n";

  @TempDir private Path data;
  private CommandTrial shell;

  @BeforeEach
  void open() {
    shell = CommandTrial.of(data, trial -> List.of(new EndLocalCommand(trial.workspace())));
  }

  @Test
  void a_district_is_found_in_any_case_with_all_its_sizes() throws IOException {
    keep(
        "Port Harlow,2.5,PCT,2026-01-31,gauge\n"
            + "Port Harlow,4.5,nst,2025-06-01,sample\n"
            + "Moss,2.5,NH,2026-01-01,letter\n");

    JsonNode found = shell.run("end", "local", "port", "HARLOW", "--json").json();

    assertThat(found.get("kept").asBoolean()).isTrue();
    assertThat(found.get("threads").valueStream().map(t -> t.get("end").asString()))
        .containsExactly("2.5 PCT male", "4.5 NH male");
    assertThat(found.get("threads").get(0).get("checkedOn").asString()).isEqualTo("2026-01-31");
    assertThat(shell.run("end", "local", "--json").json().get("threads")).hasSize(3);
  }

  @Test
  void a_missed_district_is_answered_with_the_nearest_and_whom_to_ask() throws IOException {
    keep("Port Harlow,2.5,PCT,2026-01-31,gauge\n");

    Ended ended = shell.run("end", "local", "Port Harlo");

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err())
        .contains("check with the local fire service")
        .contains("Did you mean 'Port Harlow'?");
  }

  @Test
  void without_a_register_it_is_told_how_to_make_one() throws IOException {
    Ended ended = shell.run("end", "local");

    assertThat(ended.exitCode()).isZero();
    String told = ended.out().replaceAll("\\s+", " ");
    assertThat(told).contains("district,size,family,checked_on,checked_by").contains(LINE);
    // What it says to write is what it reads.
    keep(LINE + "\n");
    assertThat(shell.run("end", "local", "Port Harlow").exitCode()).isZero();
  }

  private static final String LINE = "Port Harlow,2.5,PCT,2026-01-31,thread gauge on two hydrants";

  @Test
  void a_district_asked_for_without_a_register_is_no_success() {
    Ended ended = shell.run("end", "local", "Port Harlow");

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("no register is kept yet");
  }

  @Test
  void every_wrong_cell_is_named_with_its_line() throws IOException {
    keep("Port Harlow,2.5,PTC,31/01/2026,gauge\nMoss,2.55,NH,2026-01-01,\n");

    Ended ended = shell.run("end", "local");

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err())
        .contains("local-threads.csv line 2 column family cannot be 'PTC'")
        .contains("line 2 column checked_on")
        .contains("line 3 column size cannot be '2.55'")
        .contains("line 3 column checked_by");
  }

  private void keep(String rows) throws IOException {
    Files.writeString(data.resolve("local-threads.csv"), HEADER + rows);
  }
}
