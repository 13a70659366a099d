package hosewright.line.model;

import hosewright.job.question.Practice;
import java.util.Locale;

/** Which check it is; whoever speaks of one, here or in a paper, uses this and never its words. */
public enum CheckId {
  JOINTS_MATE("joints mate"),
  MAKE_UP_ORDER("make-up order"),
  ADAPTERS_IN_A_ROW("adapters in a row"),
  /** Stands in for every pressure check where the laws do not hold for the fluid. */
  HYDRAULICS("hydraulics"),
  DELIVERED_PRESSURE("delivered pressure"),
  PRESSURE_NEEDED("pressure needed"),
  HOSE_WORKING_PRESSURE("hose working pressure"),
  FITTING_WORKING_PRESSURE("fitting working pressure"),
  SERVICE_TEST_PRESSURE("service test pressure"),
  PRESSURE_ABOVE_ZERO("pressure above zero"),
  SUMMIT_PRESSURE("pressure at a summit"),
  HYDRANT_RESIDUAL("hydrant residual"),
  HYDRANT_LOSS("hydrant loss"),
  HYDRANT_TEST("hydrant test"),
  SUCTION_LIFT("suction lift"),
  SUCTION_VACUUM("suction vacuum"),
  PUMP_INTAKE("pump intake"),
  PUMP_FLOW("pump flow"),
  RELIEF_SETTING("relief setting"),
  VELOCITY("velocity"),
  FITTING_VELOCITY("fitting velocity"),
  END_VELOCITY("end velocity"),
  RATED_FLOW("rated flow"),
  NOZZLE_REACTION("nozzle reaction"),
  OTHER_NOZZLES_SHUT("other nozzles shut"),
  TIP("tip"),
  TIP_AND_FLOW_AGREE("tip and flow agree"),
  SUDDEN_CLOSURE("sudden closure"),
  FRICTION_LAWS_AGREE("friction laws agree"),
  FRICTION_COEFFICIENTS("friction coefficients"),
  APPLIANCE_LOSS("appliance loss"),
  NARROW_FITTING("narrow fitting"),
  REDUCED_DEVICE("reduced device"),
  PLAIN_WYE("plain wye"),
  HOSE_TYPE("hose type"),
  MADE_UP_HOSE("made-up hose"),
  SMALL_HAND_LINE("small hand line"),
  PART_TO_SOURCE("part to source"),
  FIRE_HOSE_MARK("fire hose mark"),
  DRINKING_WATER_MARKS("drinking-water marks"),
  BACKFLOW_PROTECTION("backflow protection"),
  AIR_GAP("air gap"),
  GASKETS("gaskets"),
  DISCONTINUED_ITEMS("discontinued items"),
  IN_STOCK("in stock"),
  THERE_IN_TIME("there in time"),
  OWN_HOSE("customer's own hose"),
  OWN_HOSE_MARKS("customer's own hose marks"),
  SPARE_SECTIONS("spare sections"),
  BUDGET("budget"),
  LOCAL_THREAD("local thread");

  private final String displayName;
  private final String word;
  private final boolean ofTheTrade;

  CheckId(String displayName) {
    this.displayName = displayName;
    this.word = name().toLowerCase(Locale.ROOT).replace('_', '-');
    this.ofTheTrade = Practice.find(word).isPresent();
  }

  /** What a person reads: {@code hose working pressure}. */
  public String displayName() {
    return displayName;
  }

  /** What a script reads: {@code hose-working-pressure}. */
  public String word() {
    return word;
  }

  /** Whether it holds a rule of the trade rather than one of nature or of law. */
  public boolean isOfTheTrade() {
    return ofTheTrade;
  }

  /** Whether its outcome lies in the job alone: no other choice of parts would change it. */
  public boolean isOfTheJob() {
    return this == BACKFLOW_PROTECTION
        || this == HYDRANT_RESIDUAL
        || this == PUMP_FLOW
        || this == BUDGET
        || this == END_VELOCITY;
  }
}
