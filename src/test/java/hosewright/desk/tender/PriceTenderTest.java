package hosewright.desk.tender;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.desk.OpenDesk;
import hosewright.desk.quote.ListQuotes;
import hosewright.desk.tender.PriceTender.Output;
import hosewright.desk.tender.PriceTender.Priced;
import hosewright.desk.tender.PriceTender.Request;
import hosewright.desk.tender.PriceTender.Run;
import hosewright.paper.page.Paper;
import hosewright.problem.BadInputException;
import hosewright.problem.NoSuchThingException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

  private Request asked(String customer, boolean quotes) {
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
