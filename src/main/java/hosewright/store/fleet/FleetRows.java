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
        section.sizeIn(),
        section.nominalLengthFt(),
        section.lengthFt(),
        section.endA().toString(),
        section.endB().toString(),
        section.jacket(),
        section.makerCode(),
        section.made().orElse(null),
        section.inService().orElse(null),
        section.location(),
        section.assignment(),
        section.status().name(),
        section.onRecordSince(),
        section.leftOn().orElse(null),
        null);
  }

  HoseRecord section(FleetSectionRecord row) {
    return new HoseRecord(
        row.getSectionId(),
        row.getSizeIn(),
        row.getBoughtLengthFt(),
        row.getLengthFt(),
        end(row.getEndA()),
        end(row.getEndB()),
        row.getJacket(),
        row.getMakerCode(),
        Optional.ofNullable(row.getMadeOn()),
        Optional.ofNullable(row.getInServiceOn()),
        row.getLocation(),
        row.getAssignment(),
        SectionStatus.valueOf(row.getStatus()),
        row.getOnRecordSince(),
        Optional.ofNullable(row.getLeftOn()));
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
