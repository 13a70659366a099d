package hosewright.fleet.record;

import hosewright.thread.End;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One section of hose as the inventory knows it.
 *
 * @param id what is stencilled on it
 * @param sizeIn nominal hose size, in
 * @param nominalLengthFt length as bought, ft, which its replacement has too
 * @param lengthFt length when the inventory was taken, ft
 * @param endA one coupling
 * @param endB the other coupling
 * @param jacket for example double or rubber; may be empty
 * @param makerCode the maker's or dealer's item number; may be empty
 * @param made when it was made
 * @param inService when it was first put in service
 * @param location station or store
 * @param assignment apparatus it is carried on; may be empty
 * @param status as the inventory gave it; later records may change it, see {@link Standing}
 * @param onRecordSince the first day the register knows it, from which on its failing would have
 *     been seen
 * @param leftOn the day it left service, for one whose status is retired or removed
 */
public record HoseRecord(
    String id,
    double sizeIn,
    double nominalLengthFt,
    double lengthFt,
    End endA,
    End endB,
    String jacket,
    String makerCode,
    Optional<LocalDate> made,
    Optional<LocalDate> inService,
    String location,
    String assignment,
    SectionStatus status,
    LocalDate onRecordSince,
    Optional<LocalDate> leftOn) {

  /** The day its age counts from: when it was made, else when it was put in service. */
  public LocalDate born() {
    return made.or(() -> inService).orElse(onRecordSince);
  }

  /** What would be bought in its place. */
  public HoseKind kind() {
    return new HoseKind(sizeIn, nominalLengthFt, endA, endB, jacket);
  }
}
