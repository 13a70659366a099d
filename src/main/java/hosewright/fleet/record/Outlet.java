package hosewright.fleet.record;

import hosewright.thread.End;

/**
 * A place on an apparatus or hydrant that hose is coupled to.
 *
 * @param id apparatus or hydrant; an apparatus has its id in the assignment of the hose it carries
 * @param kind which of the two
 * @param location station, street or district
 * @param end the end it offers
 * @param count how many such ends it has
 */
public record Outlet(String id, Kind kind, String location, End end, int count) {

  /** What it is on. */
  public enum Kind {
    /** The side of an apparatus that water from a hydrant enters. */
    INTAKE,
    /** The side of an apparatus that hose lines leave from. */
    DISCHARGE,
    HYDRANT
  }
}
