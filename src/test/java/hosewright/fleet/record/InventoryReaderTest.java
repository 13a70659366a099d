package hosewright.fleet.record;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.csv.CellRows;
import hosewright.csv.CsvText;
import hosewright.problem.Problem;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class InventoryReaderTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 2);

  private final List<Problem> problems = new ArrayList<>();
  private final List<HoseRecord> sections = new ArrayList<>();
  private final List<ServiceRecord> tests = new ArrayList<>();

  private static Map<String, CellRows> table(String name, List<String> columns, String... rows) {
    String text = String.join(",", columns) + "\n" + String.join("\n", rows) + "\n";
    return Map.of(name, new CsvText(name, new StringReader(text)));
  }

  private void read(String... rows) {
    new InventoryReader(TODAY, problems)
        .read(
            table("inventory.csv", InventoryReader.FORM.columns(), rows),
            (section, test) -> {
              sections.add(section);
              test.ifPresent(tests::add);
            });
  }

  @Test
  void a_full_row_is_read_with_its_last_test() {
    read(
        "H-1,1.75,48.5,50,1.5 NH female swivel x 1.5 NH male,double jacket,DJ-175,2014-03,"
            + "2014-06-01,Station 1,Engine 1,reserve,2016-01-01,,2026-05-02,300,pass");

    assertThat(problems).isEmpty();
    HoseRecord section = sections.get(0);
    assertThat(section.days().made()).contains(LocalDate.of(2014, 3, 1));
    assertThat(section.make().nominalLengthFt()).isEqualTo(50);
    assertThat(section.status()).isEqualTo(SectionStatus.RESERVE);
    assertThat(tests.get(0).outcome().code()).isEqualTo("pass");
    assertThat(tests.get(0).pressurePsi()).hasValue(300);
  }

  @Test
  void what_is_left_empty_has_a_plain_meaning() {
    read("H-1,2.5,50,,2.5 NH male x 2.5 NH female,,,,2019-06-01,Store,,,,,,,");

    assertThat(problems).isEmpty();
    HoseRecord section = sections.get(0);
    assertThat(section.make().nominalLengthFt()).isEqualTo(50);
    assertThat(section.status()).isEqualTo(SectionStatus.IN_SERVICE);
    assertThat(section.born()).isEqualTo(LocalDate.of(2019, 6, 1));
    assertThat(section.days().onRecordSince()).isEqualTo(TODAY);
  }

  @Test
  void every_bad_cell_is_named_with_line_column_and_what_is_allowed() {
    read(
        "H-1,two,50,,2.5 NH male x 2.5 NH female,,,,2019-06-01,Store,,,,,,,",
        "H-2,2.5,50,40,2.5 NH male,,,2030-01-01,,Store,,in service,,,,,",
        "H-1,2.5,50,,2.5 NH male x 2.5 XX female,,,2014-13,2019-06-01,,,retired,,,,300,");

    assertThat(problems)
        .extracting(Problem::field)
        .containsExactlyInAnyOrder(
            "inventory.csv line 2 column size_in",
            "inventory.csv line 3 column made",
            "inventory.csv line 3 column bought_length_ft",
            "inventory.csv line 3 column status",
            "inventory.csv line 3 column ends",
            "inventory.csv line 4 column id",
            "inventory.csv line 4 column made",
            "inventory.csv line 4 column location",
            "inventory.csv line 4 column ends",
            "inventory.csv line 4 column last_test");
    assertThat(problems)
        .filteredOn(problem -> problem.field().endsWith("3 column status"))
        .singleElement()
        .satisfies(problem -> assertThat(problem.nearest()).isEqualTo("in-service"));
    assertThat(sections).isEmpty();
  }

  private List<ServiceRecord> records(String... rows) {
    List<ServiceRecord> taken = new ArrayList<>();
    new RecordReader(TODAY, AgencyLimits.NONE, Set.of("H-1", "H-2"), problems)
        .read(table("records.csv", RecordReader.FORM.columns(), rows), taken::add);
    return taken;
  }

  /** Source: NFPA 1962-2018 4.8.2 (secondary summary): 3 minutes. */
  @Test
  void a_pass_held_too_short_for_the_edition_is_no_pass() {
    assertThat(records("H-1,2026-05-02,pass,300,2,,", "H-2,2026-05-02,pass,300,3,,")).hasSize(1);
    assertThat(problems)
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.field()).isEqualTo("records.csv line 2 column hold_min");
              assertThat(problem.allowed()).contains("at least 3 minutes").contains("2018");
            });
  }

  @Test
  void a_record_of_an_unknown_section_or_outcome_or_tomorrow_is_refused() {
    assertThat(records("H-3,2026-11-03,passed,300,3,,")).isEmpty();
    assertThat(problems).extracting(Problem::nearest).contains("pass");
    assertThat(problems)
        .extracting(Problem::field)
        .containsExactlyInAnyOrder(
            "records.csv line 2 column section",
            "records.csv line 2 column date",
            "records.csv line 2 column outcome");
  }

  @Test
  void a_test_passed_while_out_of_service_asks_for_the_repair_first() {
    HoseRecord section = Sections.made("H-1", LocalDate.of(2014, 3, 1));
    SectionLife life =
        new SectionLife(section, List.of(Sections.record("H-1", "2026-05-01", "leak")));
    DaysRecords day = new DaysRecords(AgencyLimits.NONE, id -> Optional.of(life), problems);

    day.take(Sections.record("H-1", "2026-06-01", "pass"));
    assertThat(problems).singleElement().satisfies(p -> assertThat(p.allowed()).contains("leak"));

    day.take(Sections.cut("H-1", "2026-06-02", 49));
    day.take(Sections.record("H-1", "2026-06-03", "pass"));
    assertThat(problems).hasSize(1);
    assertThat(day.changes())
        .singleElement()
        .satisfies(change -> assertThat(change.status()).isEqualTo(SectionStatus.IN_SERVICE));
  }

  @Test
  void the_age_limit_is_taken_at_its_word_only_where_it_is_reached() {
    SectionLife life = new SectionLife(Sections.made("H-1", LocalDate.of(2014, 3, 1)), List.of());
    DaysRecords day =
        new DaysRecords(
            new AgencyLimits(
                OptionalInt.of(12),
                OptionalInt.empty(),
                OptionalInt.empty(),
                TestRule.USUAL_EDITION),
            id -> Optional.of(life),
            problems);

    day.take(Sections.record("H-1", "2026-02-28", "age-limit"));
    assertThat(problems).singleElement().satisfies(p -> assertThat(p.allowed()).contains("fire"));
    day.take(Sections.record("H-1", "2026-03-01", "age-limit"));
    assertThat(day.changes())
        .singleElement()
        .satisfies(change -> assertThat(change.retirement()).isPresent());
  }

  @Test
  void a_record_that_is_on_file_is_passed_over() {
    HoseRecord section = Sections.made("H-1", LocalDate.of(2014, 3, 1));
    ServiceRecord passed = Sections.record("H-1", "2026-05-01", "pass");
    DaysRecords day =
        new DaysRecords(
            AgencyLimits.NONE,
            id -> Optional.of(new SectionLife(section, List.of(passed))),
            problems);

    day.take(passed);

    assertThat(day.accepted()).isEmpty();
    assertThat(day.known()).isEqualTo(1);
  }
}
