package hosewright.fleet.record;

import hosewright.thread.End;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/** Invented sections and records for tests. */
public final class Sections {
  static final LocalDate SINCE = LocalDate.of(2015, 1, 1);

  private Sections() {}

  public static HoseRecord made(String id, LocalDate made) {
    return of(id, made, SectionStatus.IN_SERVICE);
  }

  static HoseRecord of(String id, LocalDate made, SectionStatus status) {
    return new HoseRecord(
        id,
        new HoseRecord.Make(
            1.75,
            50,
            End.parse("1.5 NH female swivel"),
            End.parse("1.5 NH male"),
            "double jacket",
            ""),
        50,
        new HoseRecord.Days(
            Optional.of(made),
            Optional.of(made),
            SINCE,
            status.usable() ? Optional.empty() : Optional.of(LocalDate.of(2020, 1, 1))),
        new HoseRecord.Place("Station 1", "Engine 1"),
        status);
  }

  static HoseRecord with(HoseRecord section, String location, String endA, String endB) {
    return new HoseRecord(
        section.id(),
        new HoseRecord.Make(
            section.make().sizeIn(),
            section.make().nominalLengthFt(),
            End.parse(endA),
            End.parse(endB),
            section.make().jacket(),
            section.make().makerCode()),
        section.lengthFt(),
        section.days(),
        new HoseRecord.Place(location, section.place().assignment()),
        section.status());
  }

  static ServiceRecord record(String id, String date, String outcome) {
    return new ServiceRecord(
        id,
        LocalDate.parse(date),
        Outcome.of(outcome),
        OptionalDouble.of(300),
        OptionalDouble.of(3),
        OptionalDouble.empty(),
        "");
  }

  static ServiceRecord cut(String id, String date, double lengthFt) {
    return new ServiceRecord(
        id,
        LocalDate.parse(date),
        Outcome.of("recoupled"),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.of(lengthFt),
        "");
  }
}
