package hosewright.door.shell.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class WorkspaceTest {
  private static final Path HOME = Path.of(System.getProperty("user.home"));

  @Test
  void the_option_wins_over_the_environment_and_that_over_home(@TempDir Path temporary) {
    Path named = temporary.resolve("named");
    Workspace workspace = new Workspace(Map.of("HOSEWRIGHT_DATA", named.toString()));
    assertThat(workspace.where()).isEqualTo(named);
    workspace.choose(Optional.of(temporary.resolve("option").toString()), Optional.empty());
    assertThat(workspace.where()).isEqualTo(temporary.resolve("option"));
    assertThat(new Workspace(Map.of()).where()).isEqualTo(HOME.resolve(".hosewright"));
    assertThat(new Workspace(Map.of("HOSEWRIGHT_DATA", "")).where())
        .isEqualTo(HOME.resolve(".hosewright"));
  }

  @Test
  void a_tilde_is_home_even_where_no_shell_reads_it() {
    Workspace workspace = new Workspace(Map.of());
    workspace.choose(Optional.of("~/quotes"), Optional.empty());
    assertThat(workspace.where()).isEqualTo(HOME.resolve("quotes"));
  }

  @Test
  void asking_where_it_is_makes_nothing(@TempDir Path temporary) {
    Path folder = temporary.resolve("a/b");
    Workspace workspace = new Workspace(Map.of("HOSEWRIGHT_DATA", folder.toString()));
    workspace.where();
    assertThat(folder).doesNotExist();
    assertThat(workspace.folder()).isDirectory();
  }
}
