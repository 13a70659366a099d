package hosewright.line;

/** Counts what a search looked at, to explain it. */
final class SearchTally {
  int frames;
  int cutByPrice;
  int cutByPressure;
  int plans;

  LinePlan.Searched searched() {
    return new LinePlan.Searched(frames, cutByPrice, cutByPressure, plans);
  }
}
