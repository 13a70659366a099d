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
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.springframework.shell.core.command.Command;

/** The trade's commands; a command exists once it is named here. */
public final class Commands {
  /** What a person who opens the shell reads first. */
  public static final Greeting GREETING =
      new Greeting(
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

  private final Supplier<Books> books;
  private final Workspace workspace;
  private final Notices notices;

  private Commands(Supplier<Books> books, Workspace workspace, Notices notices) {
    this.books = books;
    this.workspace = workspace;
    this.notices = notices;
  }

  /** Over the books of the place that was chosen, of which each deed opens its own. */
  public static List<Command> of(Workspace workspace, Notices notices) {
    WorkspacePlace place = new WorkspacePlace(workspace);
    LastRead lastRead = new LastRead();
    return over(
        () -> new Books(place, notices::say, Clock.systemDefaultZone(), lastRead),
        workspace,
        notices);
  }

  /** Over these books. */
  public static List<Command> over(Supplier<Books> books, Workspace workspace, Notices notices) {
    Commands all = new Commands(books, workspace, notices);
    return Stream.of(
            all.ends(),
            all.lines(),
            all.quotes(),
            all.tenders(),
            all.orders(),
            all.kits(),
            all.catalogue(),
            all.customers(),
            all.rates(),
            all.fleet(),
            all.data())
        .flatMap(List::stream)
        .toList();
  }

  private List<Command> ends() {
    return List.of(
        new EndIdentifyCommand(),
        new EndListCommand(),
        new EndLocalCommand(workspace),
        new EndShowCommand(),
        new EndStripCommand(),
        new JointBridgeCommand(books),
        new JointCheckCommand(books));
  }

  private List<Command> lines() {
    return List.of(
        new LineCompareCommand(books), new LineFlowCommand(books), new LinePlanCommand(books));
  }

  private List<Command> quotes() {
    return List.of(
        new QuoteAcceptCommand(books),
        new QuoteCopyCommand(books),
        new QuoteDeclineCommand(books),
        new QuoteDiffCommand(books),
        new QuoteDiscardCommand(books),
        new QuoteEditCommand(books),
        new QuoteExportCommand(books),
        new QuoteHistoryCommand(books),
        new QuoteIssueCommand(books, notices),
        new QuoteListCommand(books),
        new QuoteMakeCommand(books),
        new QuoteOpenCommand(books),
        new QuoteReopenCommand(books),
        new QuoteReviseCommand(books),
        new QuoteShowCommand(books),
        new QuoteUpdatePricesCommand(books),
        new QuoteAskCommand(books),
        new QuoteAnswersCommand(books));
  }

  private List<Command> tenders() {
    return List.of(new TenderPriceCommand(books, notices));
  }

  private List<Command> orders() {
    return List.of(
        new OrderBuyCommand(books),
        new OrderCancelCommand(books),
        new OrderCountCommand(books),
        new OrderListCommand(books),
        new OrderRaiseCommand(books),
        new OrderReceiveCommand(books),
        new OrderReserveCommand(books),
        new OrderReturnCommand(books),
        new OrderShipCommand(books),
        new OrderShortagesCommand(books),
        new OrderShowCommand(books),
        new OrderStockCommand(books),
        new OrderPickCommand(books),
        new OrderPurchaseCommand(books));
  }

  private List<Command> kits() {
    return List.of(new KitAddCommand(books), new KitShowCommand(books));
  }

  private List<Command> catalogue() {
    return List.of(
        new CatalogueCheckCommand(notices),
        new CatalogueFindCommand(books),
        new CatalogueHistoryCommand(books),
        new CatalogueLoadCommand(books, notices),
        new CatalogueShowCommand(books));
  }

  private List<Command> customers() {
    return List.of(
        new CustomerAddCommand(books),
        new CustomerListCommand(books),
        new CustomerShowCommand(books));
  }

  private List<Command> rates() {
    return List.of(new RateListCommand(books), new RateSetCommand(books));
  }

  private List<Command> fleet() {
    return List.of(
        new FleetLoadCommand(books),
        new FleetStatusCommand(books),
        new FleetTestCommand(books),
        new FleetRetireCommand(books),
        new FleetTraceCommand(books),
        new FleetBudgetCommand(books));
  }

  private List<Command> data() {
    return List.of(
        new DataBackupCommand(books),
        new DataCheckCommand(workspace),
        new DataMarkCommand(books),
        new DataMoveCommand(workspace),
        new DataRestoreCommand(books),
        new DataWhereCommand(workspace));
  }
}
