package hosewright.door.shell;

import hosewright.desk.Books;
import hosewright.desk.LastRead;
import hosewright.door.shell.catalogue.CatalogueCheckCommand;
import hosewright.door.shell.catalogue.CatalogueFindCommand;
import hosewright.door.shell.catalogue.CatalogueHistoryCommand;
import hosewright.door.shell.catalogue.CatalogueLoadCommand;
import hosewright.door.shell.catalogue.CatalogueShowCommand;
import hosewright.door.shell.command.Workspace;
import hosewright.door.shell.customer.CustomerAddCommand;
import hosewright.door.shell.customer.CustomerListCommand;
import hosewright.door.shell.customer.CustomerShowCommand;
import hosewright.door.shell.data.DataBackupCommand;
import hosewright.door.shell.data.DataCheckCommand;
import hosewright.door.shell.data.DataMarkCommand;
import hosewright.door.shell.data.DataMoveCommand;
import hosewright.door.shell.data.DataRestoreCommand;
import hosewright.door.shell.data.DataWhereCommand;
import hosewright.door.shell.end.EndIdentifyCommand;
import hosewright.door.shell.end.EndListCommand;
import hosewright.door.shell.end.EndLocalCommand;
import hosewright.door.shell.end.EndShowCommand;
import hosewright.door.shell.end.EndStripCommand;
import hosewright.door.shell.end.JointBridgeCommand;
import hosewright.door.shell.end.JointCheckCommand;
import hosewright.door.shell.fleet.FleetBudgetCommand;
import hosewright.door.shell.fleet.FleetLoadCommand;
import hosewright.door.shell.fleet.FleetRetireCommand;
import hosewright.door.shell.fleet.FleetStatusCommand;
import hosewright.door.shell.fleet.FleetTestCommand;
import hosewright.door.shell.fleet.FleetTraceCommand;
import hosewright.door.shell.kit.KitAddCommand;
import hosewright.door.shell.kit.KitShowCommand;
import hosewright.door.shell.line.LineCompareCommand;
import hosewright.door.shell.line.LineFlowCommand;
import hosewright.door.shell.line.LinePlanCommand;
import hosewright.door.shell.option.WorkspacePlace;
import hosewright.door.shell.order.OrderBuyCommand;
import hosewright.door.shell.order.OrderCancelCommand;
import hosewright.door.shell.order.OrderCountCommand;
import hosewright.door.shell.order.OrderListCommand;
import hosewright.door.shell.order.OrderPickCommand;
import hosewright.door.shell.order.OrderPurchaseCommand;
import hosewright.door.shell.order.OrderRaiseCommand;
import hosewright.door.shell.order.OrderReceiveCommand;
import hosewright.door.shell.order.OrderReserveCommand;
import hosewright.door.shell.order.OrderReturnCommand;
import hosewright.door.shell.order.OrderShipCommand;
import hosewright.door.shell.order.OrderShortagesCommand;
import hosewright.door.shell.order.OrderShowCommand;
import hosewright.door.shell.order.OrderStockCommand;
import hosewright.door.shell.quote.QuoteAcceptCommand;
import hosewright.door.shell.quote.QuoteAnswersCommand;
import hosewright.door.shell.quote.QuoteAskCommand;
import hosewright.door.shell.quote.QuoteCopyCommand;
import hosewright.door.shell.quote.QuoteDeclineCommand;
import hosewright.door.shell.quote.QuoteDiffCommand;
import hosewright.door.shell.quote.QuoteDiscardCommand;
import hosewright.door.shell.quote.QuoteEditCommand;
import hosewright.door.shell.quote.QuoteExportCommand;
import hosewright.door.shell.quote.QuoteHistoryCommand;
import hosewright.door.shell.quote.QuoteIssueCommand;
import hosewright.door.shell.quote.QuoteListCommand;
import hosewright.door.shell.quote.QuoteMakeCommand;
import hosewright.door.shell.quote.QuoteOpenCommand;
import hosewright.door.shell.quote.QuoteReopenCommand;
import hosewright.door.shell.quote.QuoteReviseCommand;
import hosewright.door.shell.quote.QuoteShowCommand;
import hosewright.door.shell.quote.QuoteUpdatePricesCommand;
import hosewright.door.shell.rate.RateListCommand;
import hosewright.door.shell.rate.RateSetCommand;
import hosewright.door.shell.run.Greeting;
import hosewright.door.shell.run.Notices;
import hosewright.door.shell.tender.TenderPriceCommand;
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
  KitAddCommand.class,
  KitShowCommand.class,
  LineCompareCommand.class,
  LineFlowCommand.class,
  LinePlanCommand.class,
  QuoteAcceptCommand.class,
  QuoteCopyCommand.class,
  QuoteDeclineCommand.class,
  QuoteDiffCommand.class,
  QuoteDiscardCommand.class,
  QuoteEditCommand.class,
  QuoteExportCommand.class,
  QuoteHistoryCommand.class,
  QuoteIssueCommand.class,
  QuoteListCommand.class,
  QuoteMakeCommand.class,
  QuoteOpenCommand.class,
  QuoteReopenCommand.class,
  QuoteReviseCommand.class,
  QuoteShowCommand.class,
  QuoteUpdatePricesCommand.class,
  TenderPriceCommand.class,
  OrderBuyCommand.class,
  OrderCancelCommand.class,
  OrderCountCommand.class,
  OrderListCommand.class,
  OrderRaiseCommand.class,
  OrderReceiveCommand.class,
  OrderReserveCommand.class,
  OrderReturnCommand.class,
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
  RateListCommand.class,
  RateSetCommand.class,
  DataBackupCommand.class,
  DataCheckCommand.class,
  DataMarkCommand.class,
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
          identify 1.99in 9tpi                 says what a thread is from a caliper
          check 1.5 NPSH male on 1.5 NPT female
        Tab completes; '?' and what you want to do finds a command; 'data where' says where your
        books are kept.
        """);
  }

  /** Opens the dealer's books anew for each deed; their catalogue is read again when it changed. */
  @Bean
  Supplier<Books> books(Workspace workspace, Notices notices) {
    WorkspacePlace place = new WorkspacePlace(workspace);
    LastRead lastRead = new LastRead();
    return () -> new Books(place, notices::say, Clock.systemDefaultZone(), lastRead);
  }
}
