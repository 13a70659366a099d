package hosewright.fleet.record;

import hosewright.thread.End;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One section of hose as the inventory knows it.
 *
 * @param id what is stencilled on it
 * @param lengthFt length when the inventory was taken, ft
 * @param status as the inventory gave it; later records may change it, see {@link Standing}
 */
public record HoseRecord(
    String id, Make make, double lengthFt, Days days, Place place, SectionStatus status) {

  /** The day its age counts from: when it was made, else when it was put in service. */
  public LocalDate born() {
    return days.made().or(() -> days.inService()).orElse(days.onRecordSince());
  }

  /** What would be bought in its place. */
  public HoseKind kind() {
    return new HoseKind(
        make.sizeIn(), make.nominalLengthFt(), make.endA(), make.endB(), make.jacket());
  }

  /**
   * What it was bought as.
   *
   * @param sizeIn nominal hose size, in
   * @param nominalLengthFt length as bought, ft, which its replacement has too
   * @param endA one coupling
   * @param endB the other coupling
   * @param jacket for example double or rubber; may be empty
   * @param makerCode the maker's or dealer's item number; may be empty
   */
  public record Make(
      double sizeIn, double nominalLengthFt, End endA, End endB, String jacket, String makerCode) {}

  /**
   * The days of its life.
   *
   * @param made when it was made
   * @param inService when it was first put in service
   * @param onRecordSince the first day the register knows it, from which on its failing would have
   *     been seen
   * @param leftOn the day it left service, for one whose status is retired or removed
   */
  public record Days(
      Optional<LocalDate> made,
      Optional<LocalDate> inService,
      LocalDate onRecordSince,
      Optional<LocalDate> leftOn) {}

  /**
   * Where it is kept.
   *
   * @param location station or store
   * @param assignment apparatus it is carried on; may be empty
   */
  public record Place(String location, String assignment) {}
}
