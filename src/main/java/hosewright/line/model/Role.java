package hosewright.line.model;

/** What a part is there for; nobody learns it from a description or a place in a list. */
public enum Role {
  /** What the line starts at. */
  SOURCE,
  /** Like sections of hose, one after another. */
  HOSE,
  /** What bridges two ends that do not mate. */
  ADAPTER,
  /** What the buyer wants in the line: a valve, a meter, a backflow preventer. */
  DEVICE,
  /** Where one line becomes several: a wye. */
  SPLIT,
  /** Where several lines become one: a siamese. */
  JOIN,
  /** What takes in the water of one line and pushes it on. */
  PUMP,
  /** What the line feeds. */
  APPLIANCE;

  /** Whether a leg ends there and another may begin. */
  public boolean isNode() {
    return switch (this) {
      case SOURCE, SPLIT, JOIN, PUMP, APPLIANCE -> true;
      case HOSE, ADAPTER, DEVICE -> false;
    };
  }

  /** Whether one line becomes several there, or several one. */
  public boolean divides() {
    return this == SPLIT || this == JOIN;
  }

  /** Whether water passes a fitting there: neither hose nor one of the line's two ends. */
  public boolean isFitting() {
    return switch (this) {
      case ADAPTER, DEVICE, SPLIT, JOIN -> true;
      case SOURCE, HOSE, PUMP, APPLIANCE -> false;
    };
  }
}
