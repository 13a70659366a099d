package hosewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.desk.Books;
import hosewright.shell.CommandTrial;
import hosewright.shell.CommandTrial.Ended;
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
final class TradingDesk {
  static final String JOB = "quotes/hydrant-to-nozzle.yaml";

  final WallClock clock;
  private final CommandTrial trial;

  private static Path loaded;

  /** Books with the demo catalogue in them. */
  TradingDesk(Path data, String day) {
    clock = new WallClock(day);
    trial = CommandTrial.of(data, this::commands);
    copy(loaded(), data);
  }

  private TradingDesk(Path data) {
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
      Files.createDirectories(to);
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
            new OrderReserveCommand(books),
            new OrderShortagesCommand(books),
            new OrderStockCommand(books),
            new OrderPickCommand(books),
            new OrderPurchaseCommand(books)));
  }

  /** Runs words that are already apart. */
  Ended run(String... words) {
    return trial.run(words);
  }

  /** Runs a command that must go well and gives its document. */
  JsonNode done(String... words) {
    List<String> all = new ArrayList<>(Arrays.asList(words));
    all.add("--json");
    Ended ended = trial.run(all.toArray(String[]::new));
    assertThat(ended.exitCode()).as(ended.out() + ended.err()).isZero();
    return ended.json();
  }

  /** Runs a command that must be refused and gives what it says. */
  String refused(String... words) {
    Ended ended = trial.run(words);
    assertThat(ended.exitCode()).as(ended.out() + ended.err()).isEqualTo(2);
    return ended.err();
  }

  /** A draft of the demo job for a customer; gives its number. */
  String quote(String customer) {
    return done("quote", "make", "--job", JOB, "--customer", customer).get("number").asString();
  }
}
