package hosewright.paper.drawing;

import hosewright.line.model.Bill;
import hosewright.thread.Verdict.Outcome;
import hosewright.thread.Verdict.Seal;

/** Plain words for joints, the same on every paper. */
public final class JointWords {
  private JointWords() {}

  public static String verdict(Outcome outcome) {
    return switch (outcome) {
      case MATES -> "mates";
      case JAMS -> "JAMS";
      case NO -> "NO FIT";
      case MEASURE -> "MEASURE";
    };
  }

  public static String seal(Seal seal) {
    return switch (seal) {
      case GASKET -> "gasket";
      case THREAD -> "sealant";
      case LUG -> "lugs";
      case NONE -> "none";
    };
  }

  /** One letter for a drawing. */
  static String letter(Outcome outcome, Seal seal) {
    if (outcome != Outcome.MATES) {
      return outcome == Outcome.MEASURE ? "?" : "X";
    }
    return switch (seal) {
      case GASKET -> "G";
      case THREAD -> "S";
      case LUG -> "L";
      case NONE -> "-";
    };
  }

  public static String gaskets(Bill.Gaskets gaskets) {
    return "Gaskets: "
        + count(gaskets.fitted(), "comes fitted", "come fitted")
        + ", "
        + count(gaskets.bought(), "is to be put in", "are to be put in")
        + ", "
        + count(gaskets.spare(), "is a spare", "are spares")
        + ".";
  }

  private static String count(int count, String one, String more) {
    return (count == 0 ? "none" : count) + " " + (count == 1 ? one : more);
  }
}
