package hosewright.thread;

/** Which half of a joint an end is. */
public enum Gender {
  MALE("male"),
  FEMALE("female"),
  /** Both halves alike, as on Storz couplings. */
  SEXLESS(""),
  /** The inner half of a cam-and-groove joint. */
  PLUG("plug"),
  /** The outer half, with the cam arms, of a cam-and-groove joint. */
  SOCKET("socket");

  private final String word;

  Gender(String word) {
    this.word = word;
  }

  /** The word that stands in a written end; empty for sexless ends. */
  public String word() {
    return word;
  }
}
