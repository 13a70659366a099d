package hosewright.store.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.fleet.record.AgencyLimits;
import hosewright.fleet.record.HoseRecord;
import hosewright.fleet.record.Outcome;
import hosewright.fleet.record.Outlet;
import hosewright.fleet.record.SectionLife;
import hosewright.fleet.record.SectionStatus;
import hosewright.fleet.record.ServiceRecord;
import hosewright.store.database.BooksOn;
import hosewright.store.database.Database;
import hosewright.thread.End;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(BooksOn.class)
final class FleetStoreTest {
  @Parameter BooksOn books;

  private static final LocalDate DAY = LocalDate.of(2020, 5, 1);

  @TempDir Path folder;
  private Database database;
  private FleetStore fleet;

  @BeforeEach
  void open() {
    database = books.open(folder);
    fleet = new FleetStore(database);
  }

  @AfterEach
  void close() {
    database.close();
  }

  private static HoseRecord section(String id, String location) {
    return new HoseRecord(
        id,
        new HoseRecord.Make(
            1.75,
            50,
            End.parse("1.5 NH female swivel"),
            End.parse("1.5 NH male"),
            "double jacket",
            "DJ"),
        48.5,
        new HoseRecord.Days(
            Optional.of(LocalDate.of(2014, 3, 1)), Optional.empty(), DAY, Optional.empty()),
        new HoseRecord.Place(location, ""),
        SectionStatus.RESERVE);
  }

  private static ServiceRecord record(String id, LocalDate day, String outcome, double length) {
    return new ServiceRecord(
        id,
        day,
        Outcome.of(outcome),
        OptionalDouble.empty(),
        OptionalDouble.of(3),
        length == 0 ? OptionalDouble.empty() : OptionalDouble.of(length),
        "note");
  }

  @Test
  void sections_and_records_come_back_as_they_were_in_the_order_of_a_day() {
    HoseRecord section = section("H-1", "Station 1");
    List<ServiceRecord> records =
        List.of(
            record("H-1", DAY, "leak", 0),
            record("H-1", DAY, "recoupled", 47),
            record("H-1", DAY, "pass", 0));
    fleet.load(
        intake -> {
          intake.section(section);
          records.forEach(intake::record);
        });
    assertThat(fleet.find("H-1")).contains(new SectionLife(section, records));
    assertThat(fleet.find("H-2")).isEmpty();
  }

  @Test
  void a_second_load_brings_sections_up_to_date_and_keeps_their_records() {
    fleet.load(
        intake -> {
          intake.section(section("H-1", "Station 1"));
          intake.record(record("H-1", DAY, "pass", 0));
        });
    fleet.load(
        intake -> {
          intake.section(section("H-1", "Station 2"));
          intake.section(section("H-2", "Station 2"));
        });
    List<SectionLife> all = new ArrayList<>();
    fleet.each(all::add);
    assertThat(all).extracting(life -> life.section().place().location()).containsOnly("Station 2");
    assertThat(all.get(0).records()).hasSize(1);
    assertThat(fleet.ids()).containsExactlyInAnyOrder("H-1", "H-2");
  }

  @Test
  void a_load_that_fails_leaves_nothing() {
    assertThatThrownBy(
            () ->
                fleet.load(
                    intake -> {
                      for (int i = 0; i < 12_000; i++) {
                        intake.section(section("H-" + i, "Station 1"));
                      }
                      throw new IllegalStateException("the file broke off");
                    }))
        .hasMessageContaining("broke off");
    assertThat(fleet.isEmpty()).isTrue();
  }

  @Test
  void pages_hand_out_every_section_once_in_order() {
    fleet.load(
        intake -> {
          for (int i = 0; i < 10_001; i++) {
            intake.section(section(String.format("H-%05d", i), "Station 1"));
          }
        });
    List<String> ids = new ArrayList<>();
    fleet.each(life -> ids.add(life.section().id()));
    assertThat(ids).hasSize(10_001).isSorted().doesNotHaveDuplicates();
  }

  @Test
  void limits_and_outlets_are_kept() {
    AgencyLimits limits =
        new AgencyLimits(OptionalInt.of(12), OptionalInt.empty(), OptionalInt.of(2), "2018");
    List<Outlet> outlets =
        List.of(
            new Outlet("HY-1", Outlet.Kind.HYDRANT, "Quay", End.parse("2.5 NH male"), 2),
            new Outlet("Engine 1", Outlet.Kind.INTAKE, "", End.parse("5 Storz"), 1));
    assertThat(fleet.limits()).isEqualTo(AgencyLimits.NONE);
    fleet.replaceLimits(limits);
    fleet.replaceOutlets(outlets);
    assertThat(fleet.limits()).isEqualTo(limits);
    assertThat(fleet.outlets()).isEqualTo(outlets);
  }
}
