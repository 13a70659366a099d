package hosewright.thread;

/** How the two halves of a family hold each other. */
public enum FamilyKind {
  STRAIGHT_THREAD("straight thread"),
  TAPER_THREAD("taper thread"),
  /** Two like halves, turned against each other. */
  SEXLESS("sexless"),
  /** Cam-and-groove: a plug drawn into a socket by two arms. */
  CAM("cam"),
  /** A push-in joint with sprung lugs. */
  INSTANTANEOUS("instantaneous");

  private final String word;

  FamilyKind(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  public boolean threaded() {
    return this == STRAIGHT_THREAD || this == TAPER_THREAD;
  }

  static FamilyKind of(String word) {
    for (FamilyKind kind : values()) {
      if (kind.word.equals(word)) {
        return kind;
      }
    }
    throw new IllegalArgumentException("no kind of family is called " + word);
  }
}
