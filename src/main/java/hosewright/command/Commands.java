package hosewright.command;

import hosewright.desk.Books;
import hosewright.shell.Greeting;
import hosewright.shell.Notices;
import hosewright.shell.Workspace;
import java.time.Clock;
import java.util.function.Supplier;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;

/** The trade's commands; a command exists once it is named here. */
@Configuration(proxyBeanMethods = false)
@Import({
  EndIdentifyCommand.class,
  EndListCommand.class,
  EndLocalCommand.class,
  EndShowCommand.class,
  EndStripCommand.class,
  FleetLoadCommand.class,
  FleetStatusCommand.class,
  FleetTestCommand.class,
  FleetRetireCommand.class,
  FleetTraceCommand.class,
  FleetBudgetCommand.class,
  JointBridgeCommand.class,
  JointCheckCommand.class,
  LineCompareCommand.class,
  LineFlowCommand.class,
  LinePlanCommand.class,
  QuoteAcceptCommand.class,
  QuoteCopyCommand.class,
  QuoteDeclineCommand.class,
  QuoteDiffCommand.class,
  QuoteExportCommand.class,
  QuoteHistoryCommand.class,
  QuoteIssueCommand.class,
  QuoteListCommand.class,
  QuoteMakeCommand.class,
  QuoteReopenCommand.class,
  QuoteReviseCommand.class,
  QuoteShowCommand.class,
  QuoteUpdatePricesCommand.class,
  TenderPriceCommand.class,
  OrderCancelCommand.class,
  OrderListCommand.class,
  OrderRaiseCommand.class,
  OrderReceiveCommand.class,
  OrderReserveCommand.class,
  OrderShipCommand.class,
  OrderShortagesCommand.class,
  OrderShowCommand.class,
  OrderStockCommand.class,
  OrderPickCommand.class,
  OrderPurchaseCommand.class,
  QuoteAskCommand.class,
  QuoteAnswersCommand.class,
  CatalogueCheckCommand.class,
  CatalogueFindCommand.class,
  CatalogueHistoryCommand.class,
  CatalogueLoadCommand.class,
  CatalogueShowCommand.class,
  CustomerAddCommand.class,
  CustomerListCommand.class,
  CustomerShowCommand.class,
  DataBackupCommand.class,
  DataMoveCommand.class,
  DataRestoreCommand.class,
  DataWhereCommand.class
})
public class Commands {

  @Bean
  Greeting greeting() {
    return new Greeting(
        """
        Welcome. Until you load your own, goods and prices are an invented dealer's.
        Some things to type first:
          line plan                            asks for a job, one question at a time
          quote make                           the same, and keeps a numbered quote
          end identify --od 1.99in --tpi 9     says what a thread is from a caliper
          joint check --a "1.5 NPSH male" --b "1.5 NPT female"
        Tab completes; 'data where' says where your books are kept.
        """);
  }

  /** Opens the dealer's books anew for each deed. */
  @Bean
  Supplier<Books> books(Workspace workspace, Notices notices) {
    WorkspacePlace place = new WorkspacePlace(workspace);
    return () -> new Books(place, notices::say, Clock.systemDefaultZone());
  }
}
