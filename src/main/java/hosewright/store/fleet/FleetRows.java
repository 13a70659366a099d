package hosewright.store.fleet;

import hosewright.fleet.record.HoseRecord;
import hosewright.fleet.record.Outcome;
import hosewright.fleet.record.SectionStatus;
import hosewright.fleet.record.ServiceRecord;
import hosewright.store.db.tables.records.FleetRecordRecord;
import hosewright.store.db.tables.records.FleetSectionRecord;
import hosewright.thread.End;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Sections and their records as rows, and back. */
final class FleetRows {
  /** A fleet has few kinds of ends, and reading one takes longer than all the rest of a row. */
  private final Map<String, End> ends = new HashMap<>();

  static FleetSectionRecord row(HoseRecord section) {
    return new FleetSectionRecord(
        section.id(),
        section.make().sizeIn(),
        section.make().nominalLengthFt(),
        section.lengthFt(),
        section.make().endA().toString(),
        section.make().endB().toString(),
        section.make().jacket(),
        section.make().makerCode(),
        section.days().made().orElse(null),
        section.days().inService().orElse(null),
        section.place().location(),
        section.place().assignment(),
        section.status().name(),
        section.days().onRecordSince(),
        section.days().leftOn().orElse(null),
        null);
  }

  HoseRecord section(FleetSectionRecord row) {
    return new HoseRecord(
        row.getSectionId(),
        new HoseRecord.Make(
            row.getSizeIn(),
            row.getBoughtLengthFt(),
            end(row.getEndA()),
            end(row.getEndB()),
            row.getJacket(),
            row.getMakerCode()),
        row.getLengthFt(),
        new HoseRecord.Days(
            Optional.ofNullable(row.getMadeOn()),
            Optional.ofNullable(row.getInServiceOn()),
            row.getOnRecordSince(),
            Optional.ofNullable(row.getLeftOn())),
        new HoseRecord.Place(row.getLocation(), row.getAssignment()),
        SectionStatus.valueOf(row.getStatus()));
  }

  static FleetRecordRecord row(ServiceRecord record, int entry) {
    return new FleetRecordRecord(
        record.section(),
        entry,
        record.date(),
        record.outcome().code(),
        orNull(record.pressurePsi()),
        orNull(record.holdMinutes()),
        orNull(record.lengthFt()),
        record.note(),
        null);
  }

  static ServiceRecord record(FleetRecordRecord row) {
    return new ServiceRecord(
        row.getSectionId(),
        row.getRecordedOn(),
        Outcome.of(row.getOutcome()),
        orEmpty(row.getPressurePsi()),
        orEmpty(row.getHoldMinutes()),
        orEmpty(row.getLengthFt()),
        row.getNote());
  }

  End end(String written) {
    return ends.computeIfAbsent(written, End::parse);
  }

  private static Double orNull(OptionalDouble number) {
    return number.isPresent() ? (Double) number.getAsDouble() : null;
  }

  private static OptionalDouble orEmpty(Double number) {
    return number == null ? OptionalDouble.empty() : OptionalDouble.of(number);
  }
}
