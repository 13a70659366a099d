package hosewright.job.question;

/** What an answer is usually picked from; whoever asks knows where that is kept. */
public enum Offer {
  /** Anything may be said. */
  NOTHING,
  /** Ends that a source may have. */
  SOURCES,
  /** Ends that an appliance may have. */
  APPLIANCES,
  /** Nominal sizes of hose. */
  SIZES,
  /** Thread and coupling families. */
  FAMILIES,
  /** Kinds of parts beside the line. */
  ACCESSORIES,
  /** Customers there are; no other will do. */
  CUSTOMERS,
  /** Districts in the register of local threads. */
  DISTRICTS
}
