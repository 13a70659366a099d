package hosewright.door.shell.run;

import hosewright.door.shell.command.CommandIndex;
import hosewright.door.shell.command.Workspace;
import hosewright.door.shell.screen.Standard;
import java.util.LinkedHashSet;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandRegistry;

/** What the program is made of; a command exists once it is named here or in a class like it. */
@Configuration(proxyBeanMethods = false)
@Import({HelpCommand.class, VersionCommand.class, QuitCommand.class})
class ShellConfiguration {

  @Bean
  Standard standard() {
    return Standard.ofProcess();
  }

  @Bean
  Notices notices(Standard standard) {
    return new Notices(standard);
  }

  @Bean
  Workspace workspace() {
    return new Workspace(System.getenv());
  }

  @Bean
  CommandRegistry commandRegistry(ObjectProvider<Command> commands) {
    return new CommandRegistry(new LinkedHashSet<>(commands.orderedStream().toList()));
  }

  @Bean
  CommandIndex commandIndex(CommandRegistry registry, Workspace workspace) {
    return new CommandIndex(registry, workspace);
  }

  @Bean
  CommandLineParser commandLineParser(CommandIndex commands) {
    return new CommandLineParser(commands);
  }

  @Bean
  FailureReport failureReport(Workspace workspace, Standard standard) {
    return new FailureReport(workspace, standard);
  }

  @Bean
  CommandRunner commandRunner(
      CommandRegistry registry, CommandLineParser parser, FailureReport failures) {
    return new CommandRunner(registry, parser, failures);
  }

  @Bean
  SessionRunner sessionRunner(
      CommandRunner commands,
      CommandIndex index,
      Workspace workspace,
      Standard standard,
      FailureReport failures,
      ObjectProvider<Greeting> greeting) {
    return new SessionRunner(
        commands,
        index,
        workspace,
        standard,
        failures,
        greeting.getIfAvailable(() -> new Greeting("")));
  }
}
