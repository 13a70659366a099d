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
        1.75,
        50,
        50,
        End.parse("1.5 NH female swivel"),
        End.parse("1.5 NH male"),
        "double jacket",
        "",
        Optional.of(made),
        Optional.of(made),
        "Station 1",
        "Engine 1",
        status,
        SINCE,
        status.usable() ? Optional.empty() : Optional.of(LocalDate.of(2020, 1, 1)));
  }

  static HoseRecord with(HoseRecord section, String location, String endA, String endB) {
    return new HoseRecord(
        section.id(),
        section.sizeIn(),
        section.nominalLengthFt(),
        section.lengthFt(),
        End.parse(endA),
        End.parse(endB),
        section.jacket(),
        section.makerCode(),
        section.made(),
        section.inService(),
        location,
        section.assignment(),
        section.status(),
        section.onRecordSince(),
        section.leftOn());
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
