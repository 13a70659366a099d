package hosewright.door.shell.run;

import hosewright.door.shell.command.Workspace;
import hosewright.door.shell.screen.Standard;
import java.util.List;
import java.util.logging.LogManager;
import java.util.stream.Stream;
import org.springframework.boot.LazyInitializationBeanFactoryPostProcessor;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;

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
    // Spring Boot's own start reads settings from the folder the user stands in, binds and converts
    // them and sets up logging: none of it is wanted, and it costs start-up time.
    try (AnnotationConfigApplicationContext context = new AnnotationConfigApplicationContext()) {
      context.addBeanFactoryPostProcessor(new LazyInitializationBeanFactoryPostProcessor());
      context.register(sources);
      context.refresh();
      return context.getBean(SessionRunner.class).run(args);
    } catch (RuntimeException | Error failure) {
      List<String> words = List.of(args);
      Standard standard = Standard.ofProcess();
      return new FailureReport(new Workspace(System.getenv()), standard)
          .of(
              failure,
              TypedNames.NONE,
              words.contains("--json"),
              words.contains("--verbose"),
              "",
              standard.screen());
    }
  }
}
