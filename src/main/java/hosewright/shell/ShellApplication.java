package hosewright.shell;

import java.util.List;
import java.util.logging.LogManager;
import java.util.stream.Stream;
import org.springframework.boot.Banner;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.WebApplicationType;
import org.springframework.context.ConfigurableApplicationContext;

/** Starts the program around one set of arguments and gives its exit code. */
public final class ShellApplication {
  private ShellApplication() {}

  /**
   * Runs a command, a script or the interactive shell, whichever the arguments ask for.
   *
   * @param more further configuration classes, each of which brings commands
   * @return 0 done, 2 bad input, 3 no safe plan, 1 our fault
   */
  public static int run(String[] args, Class<?>... more) {
    // Libraries log through java.util.logging; none of it is for the user's console.
    LogManager.getLogManager().reset();
    Class<?>[] sources =
        Stream.concat(Stream.of(ShellConfiguration.class), Stream.of(more)).toArray(Class[]::new);
    SpringApplication application = new SpringApplication(sources);
    application.setWebApplicationType(WebApplicationType.NONE);
    application.setBannerMode(Banner.Mode.OFF);
    application.setLogStartupInfo(false);
    application.setLazyInitialization(true);
    application.setAddCommandLineProperties(false);
    // Spring Boot's own listeners read settings from the folder the user stands in and set up
    // logging: neither is wanted, and both cost start-up time.
    application.setListeners(List.of());
    application.setInitializers(List.of());
    try {
      ConfigurableApplicationContext context = application.run(args);
      return SpringApplication.exit(context);
    } catch (RuntimeException | Error failure) {
      List<String> words = List.of(args);
      Standard standard = Standard.ofProcess();
      return new FailureReport(new Workspace(System.getenv()), standard)
          .of(
              failure,
              words.contains("--json"),
              words.contains("--verbose"),
              "",
              standard.screen());
    }
  }
}
