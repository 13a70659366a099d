package hosewright.line.model;

/** Who brings a part. */
public enum Owner {
  DEALER,
  /** The buyer has it already: the outlet, the appliance, sections of their own. */
  BUYER
}
