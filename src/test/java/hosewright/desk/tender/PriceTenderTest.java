package hosewright.desk.tender;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.desk.OpenDesk;
import hosewright.desk.quote.ListQuotes;
import hosewright.desk.quote.ShowQuote;
import hosewright.desk.tender.PriceTender.Kept;
import hosewright.desk.tender.PriceTender.Output;
import hosewright.desk.tender.PriceTender.Priced;
import hosewright.desk.tender.PriceTender.Request;
import hosewright.desk.tender.PriceTender.Run;
import hosewright.paper.page.Paper;
import hosewright.problem.BadInputException;
import hosewright.problem.NoSuchThingException;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A tender as the desk prices it, whatever the door. */
final class PriceTenderTest {
  private static final String JOBS =
      """
      id,title,from,to,length (ft),flow,need (psi),source-pressure,size,use
      1,first,2.5 NH male hydrant,1.5 NH female nozzle,400,95 gpm,75,150 psi,1.75 in,fire
      2,weak,2.5 NH male hydrant,1.5 NH female nozzle,400,150 gpm,75,150 psi,1.75 in,fire
      3,unreadable,2.5 NH male hydrant,1.5 NH female nozzle,400,95,75,150 psi,1.75 in,fyre
      """;

  @TempDir private Path folder;
  private final List<String> seen = new ArrayList<>();
  private OpenDesk desk;

  @BeforeEach
  void open() throws IOException {
    desk = new OpenDesk(folder.resolve("data"), "2026-11-02");
    Files.writeString(folder.resolve("jobs.csv"), JOBS);
  }

  @Test
  void every_job_ends_somewhere_and_each_that_can_be_laid_has_its_quote() {
    Priced priced = new PriceTender(desk).price(asked("COUNTER", true), watcher());

    assertThat(priced.counts().jobs()).isEqualTo(3);
    assertThat(priced.counts().priced()).isEqualTo(1);
    assertThat(priced.counts().noSafePlan()).isEqualTo(1);
    assertThat(priced.counts().badInput()).isEqualTo(1);
    assertThat(priced.resumedAfter()).isZero();
    assertThat(priced.workbook()).isNotEmptyFile();
    assertThat(folder.resolve("jobs-priced.journal")).doesNotExist();
    assertThat(new ListQuotes(desk).list()).hasSize(1);
  }

  @Test
  void whoever_watches_is_told_of_the_beginning_each_job_and_the_end() {
    new PriceTender(desk).price(asked("", false), watcher());

    assertThat(seen).containsExactly("begins 0 of 3", "done 1", "done 2", "done 3", "ends");
  }

  @Test
  void nothing_begins_where_the_workbook_has_no_place_or_the_customer_is_unknown()
      throws IOException {
    assertThatThrownBy(() -> new PriceTender(desk).price(asked("NOBODY", false), watcher()))
        .isInstanceOf(NoSuchThingException.class);
    Files.createFile(folder.resolve("jobs-priced.xlsx"));
    assertThatThrownBy(() -> new PriceTender(desk).price(asked("", false), watcher()))
        .isInstanceOf(BadInputException.class);

    assertThat(seen).isEmpty();
    assertThat(folder.resolve("jobs-priced.journal")).doesNotExist();
  }

  /** A job that can be laid, a weak one, and two packages: one good, one whose job is not there. */
  private void putPackages() throws IOException {
    Files.copy(Path.of("quotes/wash-down.yaml"), folder.resolve("wash-down.yaml"));
    Files.writeString(
        folder.resolve("fit-out.yaml"),
        """
        title: Fit-out
        jobs:
          - job: wash-down.yaml
            count: 2
          - parts: [10 x H175-DJ-50-15NH, 1 x Mounting @ 85.00]
        """);
    Files.writeString(folder.resolve("broken.yaml"), "jobs:\n  - job: nowhere.yaml\n");
    Files.writeString(
        folder.resolve("jobs.csv"),
        """
        id,package,title,from,to,length (ft),flow,need (psi),source-pressure,section,use
        1,,first,2.5 NH male hydrant,1.5 NH female nozzle,400,95 gpm,75,150 psi,50 ft,fire
        2,fit-out.yaml,,,,,,,,,
        3,broken.yaml,,,,,,,,,
        4,fit-out.yaml,,,,400,,,,,
        """);
  }

  @Test
  void a_row_may_name_a_package_and_each_is_one_quote_of_several_groups() throws IOException {
    putPackages();
    Priced priced = new PriceTender(desk).price(asked("COUNTER", true), watcher());

    assertThat(priced.counts().priced()).isEqualTo(2);
    // A package whose job is not there, and a length beside a package.
    assertThat(priced.counts().badInput()).isEqualTo(2);
    Quote fitOut = new ShowQuote(desk).show("2", Optional.empty(), false).quote();
    assertThat(fitOut.basis().title()).isEqualTo("Fit-out");
    assertThat(fitOut.groups()).extracting(Group::count).containsExactly(2, 1);
    Money goods =
        new ShowQuote(desk)
            .show("1", Optional.empty(), false)
            .quote()
            .totals()
            .subtotal()
            .plus(fitOut.totals().subtotal());
    assertThat(priced.counts().goods()).isEqualTo(goods);
  }

  @Test
  void all_rows_that_can_be_laid_may_be_one_quote_priced_together() throws IOException {
    putPackages();
    Priced priced = new PriceTender(desk).price(asked("COUNTER", Kept.ONE), watcher());

    assertThat(new ListQuotes(desk).list()).hasSize(1);
    Quote one = priced.quote().orElseThrow();
    assertThat(one.groups()).extracting(Group::number).containsExactly(1, 2, 3);
    // Nine sections in the first row and ten in the parts of the package reach one break.
    assertThat(
            one.lines().stream()
                .filter(line -> line.goods().item().equals("H175-DJ-50-15NH"))
                .map(line -> line.price().unitPrice())
                .distinct())
        .hasSize(1);
    assertThat(one.savedTogether().isPositive()).isTrue();
    assertThat(one.lines()).anyMatch(line -> line.goods().key().equals("Mounting"));
    assertThat(one.totals().subtotal()).isLessThan(priced.counts().goods());
  }

  @Test
  void the_one_quote_is_found_again_when_its_run_is_begun_anew() throws IOException {
    putPackages();
    Quote first =
        new PriceTender(desk).price(asked("COUNTER", Kept.ONE), watcher()).quote().orElseThrow();
    Files.delete(folder.resolve("jobs-priced.xlsx"));
    Quote again =
        new PriceTender(desk).price(asked("COUNTER", Kept.ONE), watcher()).quote().orElseThrow();

    assertThat(again.number()).isEqualTo(first.number());
    assertThat(new ListQuotes(desk).list()).hasSize(1);
  }

  @Test
  void one_quote_has_one_buyer_and_a_row_for_another_is_not_in_it() throws IOException {
    Files.writeString(
        folder.resolve("jobs.csv"),
        """
        id,customer,from,to,length (ft),flow,need (psi),source-pressure,size,use
        1,,2.5 NH male hydrant,1.5 NH female nozzle,400,95 gpm,75,150 psi,1.75 in,fire
        2,HARLOW-FD,2.5 NH male hydrant,1.5 NH female nozzle,400,95 gpm,75,150 psi,1.75 in,fire
        """);
    assertThatThrownBy(() -> new PriceTender(desk).price(asked("", Kept.ONE), watcher()))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("customer");
    Priced priced = new PriceTender(desk).price(asked("COUNTER", Kept.ONE), watcher());

    assertThat(priced.counts().badInput()).isEqualTo(1);
    assertThat(priced.quote().orElseThrow().groups()).hasSize(1);
  }

  @Test
  void a_run_goes_on_only_where_the_packages_it_names_are_the_same() throws IOException {
    putPackages();
    String before = TenderInput.read(folder.resolve("jobs.csv").toString()).sha256();
    assertThat(TenderInput.read(folder.resolve("jobs.csv").toString()).sha256()).isEqualTo(before);
    Files.writeString(
        folder.resolve("wash-down.yaml"),
        Files.readString(folder.resolve("wash-down.yaml")) + "spare-sections: 1\n");
    assertThat(TenderInput.read(folder.resolve("jobs.csv").toString()).sha256())
        .isNotEqualTo(before);
  }

  private Request asked(String customer, boolean quotes) {
    return asked(customer, quotes ? Kept.EACH : Kept.NONE);
  }

  private Request asked(String customer, Kept quotes) {
    return new Request(
        folder.resolve("jobs.csv").toString(),
        customer,
        Optional.empty(),
        new Output(Paper.LETTER, folder, false),
        new Run(quotes, false, 1),
        "ines");
  }

  private Watcher watcher() {
    return new Watcher() {
      @Override
      public void begins(int before, int jobs) {
        seen.add("begins " + before + " of " + jobs);
      }

      @Override
      public void done(int jobs) {
        seen.add("done " + jobs);
      }

      @Override
      public void ends() {
        seen.add("ends");
      }
    };
  }
}
