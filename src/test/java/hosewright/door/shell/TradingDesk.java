package hosewright.door.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.desk.Books;
import hosewright.disk.OwnerOnly;
import hosewright.door.shell.catalogue.CatalogueLoadCommand;
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
import hosewright.door.shell.quote.QuoteExportCommand;
import hosewright.door.shell.quote.QuoteHistoryCommand;
import hosewright.door.shell.quote.QuoteIssueCommand;
import hosewright.door.shell.quote.QuoteListCommand;
import hosewright.door.shell.quote.QuoteMakeCommand;
import hosewright.door.shell.quote.QuoteReopenCommand;
import hosewright.door.shell.quote.QuoteReviseCommand;
import hosewright.door.shell.quote.QuoteShowCommand;
import hosewright.door.shell.quote.QuoteUpdatePricesCommand;
import hosewright.door.shell.rate.RateListCommand;
import hosewright.door.shell.rate.RateSetCommand;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import hosewright.store.database.Database;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.springframework.shell.core.command.Command;
import tools.jackson.databind.JsonNode;

/** The commands of quoting and buying over books of their own, on a day a test chooses. */
public final class TradingDesk {
  static final String JOB = "quotes/hydrant-to-nozzle.yaml";

  final WallClock clock;
  private final Path data;
  private final CommandTrial trial;

  private static Path loaded;

  /** Books with the demo catalogue in them. */
  public TradingDesk(Path data, String day) {
    this.data = data;
    clock = new WallClock(day);
    trial = CommandTrial.of(data, this::commands);
    copy(loaded(), data);
  }

  private TradingDesk(Path data) {
    this.data = data;
    clock = new WallClock("2026-01-02");
    trial = CommandTrial.of(data, this::commands);
  }

  /** Made once: a new store and its catalogue take longer than most tests. */
  private static synchronized Path loaded() {
    if (loaded == null) {
      try {
        loaded = Files.createTempDirectory("hosewright-desk");
        loaded.toFile().deleteOnExit();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      new TradingDesk(loaded).done("catalogue", "load", "catalogue");
    }
    return loaded;
  }

  private static void copy(Path from, Path to) {
    try (Stream<Path> files = Files.list(from)) {
      OwnerOnly.folder(to);
      for (Path file : files.toList()) {
        Files.copy(file, to.resolve(file.getFileName()));
        file.toFile().deleteOnExit();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private List<Command> commands(CommandTrial made) {
    Supplier<Books> books = DemoBooks.at(made, clock);
    return new ArrayList<>(
        List.of(
            new CatalogueLoadCommand(books, made.notices()),
            new QuoteMakeCommand(books),
            new QuoteReviseCommand(books),
            new QuoteUpdatePricesCommand(books),
            new QuoteCopyCommand(books),
            new QuoteDiffCommand(books),
            new QuoteDiscardCommand(books),
            new RateSetCommand(books),
            new RateListCommand(books),
            new QuoteIssueCommand(books, made.notices()),
            new QuoteAcceptCommand(books),
            new QuoteDeclineCommand(books),
            new QuoteReopenCommand(books),
            new QuoteHistoryCommand(books),
            new QuoteListCommand(books),
            new QuoteShowCommand(books),
            new QuoteExportCommand(books),
            new QuoteAskCommand(books),
            new QuoteAnswersCommand(books),
            new OrderRaiseCommand(books),
            new OrderListCommand(books),
            new OrderShowCommand(books),
            new OrderReceiveCommand(books),
            new OrderShipCommand(books),
            new OrderCancelCommand(books),
            new OrderReturnCommand(books),
            new OrderCountCommand(books),
            new OrderBuyCommand(books),
            new OrderReserveCommand(books),
            new OrderShortagesCommand(books),
            new OrderStockCommand(books),
            new OrderPickCommand(books),
            new OrderPurchaseCommand(books)));
  }

  /**
   * Has the store open until closed, as a second window of this process would: to open it and to
   * close it anew for each command takes longer than most commands.
   */
  public Database open() {
    return Database.open(data);
  }

  /** Lets it be noon of a day. */
  public void on(String day) {
    clock.set(day);
  }

  /** Runs words that are already apart. */
  public Ended run(String... words) {
    return trial.run(words);
  }

  /** Runs a command that must go well and gives its document. */
  public JsonNode done(String... words) {
    List<String> all = new ArrayList<>(Arrays.asList(words));
    all.add("--json");
    Ended ended = trial.run(all.toArray(String[]::new));
    assertThat(ended.exitCode()).as(ended.out() + ended.err()).isZero();
    return ended.json();
  }

  /** Runs a command that must be refused and gives what it says. */
  public String refused(String... words) {
    Ended ended = trial.run(words);
    assertThat(ended.exitCode()).as(ended.out() + ended.err()).isEqualTo(2);
    return ended.err();
  }

  /** A draft of the demo job for a customer; gives its number. */
  public String quote(String customer) {
    return done("quote", "make", "--job", JOB, "--customer", customer).get("number").asString();
  }
}
