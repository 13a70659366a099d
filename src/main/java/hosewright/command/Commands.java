package hosewright.command;

import hosewright.shell.Notices;
import hosewright.shell.Workspace;
import java.time.Clock;
import org.springframework.beans.factory.config.ConfigurableBeanFactory;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.context.annotation.Scope;

/** The trade's commands; a command exists once it is named here. */
@Configuration(proxyBeanMethods = false)
@Import({
  EndIdentifyCommand.class,
  EndListCommand.class,
  EndLocalCommand.class,
  EndShowCommand.class,
  EndStripCommand.class,
  JointBridgeCommand.class,
  JointCheckCommand.class,
  LinePlanCommand.class,
  LineCompareCommand.class,
  LineFlowCommand.class,
  QuoteMakeCommand.class,
  QuoteListCommand.class,
  QuoteShowCommand.class,
  QuoteExportCommand.class,
  TenderPriceCommand.class,
  CatalogueLoadCommand.class
})
public class Commands {

  @Bean
  @Scope(ConfigurableBeanFactory.SCOPE_PROTOTYPE)
  Books books(Workspace workspace, Notices notices) {
    return new Books(workspace, notices, Clock.systemDefaultZone());
  }
}
