package hosewright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.desk.OpenDesk;
import hosewright.door.shell.AllCommands;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import hosewright.problem.PlainText;
import hosewright.store.database.Database;
import hosewright.store.database.OlderTexts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Books written before any door refused hidden marks: whatever text of theirs holds some, every
 * command that shows it spells them out, and so does every paper.
 */
final class StoredMarksTest {
  /** One that these tests type, and some of the demo tables'. */
  private static final List<String> WORDS =
      List.of("Zephyrine", "Attack hose", "Osprey", "Quillback", "Mill Hill", "Lantern");

  /**
   * Some that steer a terminal, some that turn the order of letters, and one that is no character.
   */
  private static final String MARKS = "\u001B\u009D\u0007\u202E\u2066\uFFFE";

  private static final List<String> WRITTEN =
      List.of(
          "customer add --id MOSS-CREW --name 'Mossgate Zephyrine Crew' --class agency"
              + " --address '2 Zephyrine Row' --tax-name 'Zephyrine tax' --tax-rate 6.25%",
          "rate set CAD 0.73 --from 2026-01-01 --source 'our bank Zephyrine'",
          "quote make --job quotes/hydrant-to-nozzle.yaml --customer MOSS-CREW"
              + " --title 'Zephyrine yard' --by 'ines Zephyrine'",
          "quote revise 1 --quantity 1=40 --add '1 x Crating Zephyrine @ 35.00' --heading"
              + " '1=Zephyrine hose' --remark '1=Zephyrine soon' --discount 1=10% --discount-reason"
              + " 'Zephyrine first' --price 2=30.00 --price-reason 'Zephyrine told' --note"
              + " 'Zephyrine gate' --reason 'Zephyrine more'",
          "quote issue 1 --by 'ines Zephyrine' --unknown-margin-by 'Zephyrine'",
          "quote accept 1 --note 'Zephyrine 4711'",
          "order raise 1 --by 'Zephyrine tom'",
          "order count W-HYD 12 --reason 'counted by Zephyrine'");

  private static final List<String> SHOWN =
      List.of(
          "customer list",
          "customer show MOSS-CREW",
          "rate list",
          "catalogue find attack hose",
          "catalogue show H175-DJ-50-15NH --internal",
          "catalogue history H175-DJ-50-15NH",
          "quote list",
          "quote show 1 --internal",
          "quote history 1",
          "quote diff Q-000001-r1 Q-000001-r2",
          "quote copy 1 --customer COUNTER",
          "quote edit 2 --out FOLDER/lines.txt",
          "quote export 1 --as workbook,pdf,csv,json,summary --out FOLDER",
          "order list",
          "order show 1",
          "order pick 1 --as text,xlsx,pdf --out FOLDER",
          "order purchase P-000001 --as text,xlsx,pdf --out FOLDER",
          "order shortages",
          "order stock W-HYD",
          "fleet status",
          "fleet trace PH-0001");

  @TempDir Path folder;

  /** As a second window of the shop's would: to open it anew takes longer than most commands. */
  @AutoClose private Database held;

  @Test
  void marks_kept_by_an_older_version_are_spelt_out_on_every_screen_and_paper() throws Exception {
    Path data = folder.resolve("data");
    OpenDesk.putDemoInto(data);
    held = Database.open(data);
    CommandTrial shell = CommandTrial.of(data, AllCommands::of);
    loadHose(shell);
    WRITTEN.forEach(line -> done(shell.typed(line)));
    assertThat(OlderTexts.put(held, WORDS, MARKS)).isGreaterThan(20);

    Path papers = Files.createDirectories(folder.resolve("papers"));
    int spelt = 0;
    for (String line : SHOWN) {
      String typed = line.replace("FOLDER", papers.toString());
      Ended shown = done(shell.typed(typed));
      done(shell.typed(typed + (line.contains("FOLDER") ? " --overwrite" : "") + " --json")).json();
      spelt += shown.out().contains("{U+001B}") ? 1 : 0;
    }
    assertThat(spelt).as("commands that showed some").isGreaterThan(10);
    arePlain(papers);
  }

  /** A few sections of the demo's hose, one with a note. */
  private void loadHose(CommandTrial shell) throws IOException {
    Path hose = Files.createDirectories(folder.resolve("hose"));
    for (String name : List.of("inventory.csv", "outlets.csv", "records.csv")) {
      List<String> lines = Files.readAllLines(Path.of("catalogue/fleet").resolve(name));
      Files.write(
          hose.resolve(name),
          name.equals("records.csv")
              ? List.of(lines.get(0), "PH-0001,2014-05-03,pass,300,3,,Zephyrine")
              : lines.subList(0, 4));
    }
    done(shell.run("fleet", "load", hose.toString()));
  }

  private static Ended done(Ended ended) {
    String shown = ended.out() + ended.err();
    assertThat(PlainText.is(shown)).as(PlainText.spelt(shown)).isTrue();
    assertThat(ended.exitCode()).as(shown).isZero();
    return ended;
  }

  private static void arePlain(Path papers) throws Exception {
    try (Stream<Path> files = Files.list(papers)) {
      for (Path file : files.toList()) {
        if (file.toString().endsWith(".xlsx")) {
          WellFormed.workbook(file);
        } else if (!file.toString().endsWith(".pdf")) {
          String text = Files.readString(file);
          assertThat(PlainText.is(text)).as("%s: %s", file, PlainText.spelt(text)).isTrue();
        }
      }
    }
  }
}
