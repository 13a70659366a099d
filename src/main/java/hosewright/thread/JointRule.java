package hosewright.thread;

import hosewright.csv.PlainNumber;
import hosewright.csv.ReferenceTable;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVRecord;

/**
 * One row of {@code joint-rules.csv}: which pairs it speaks about and what it says of them. The
 * first row of the table that speaks of a pair decides it, so the order of the rows is law: a row
 * for two families stands above the row for their groups.
 *
 * @param name what the rule is called
 * @param families the families it speaks about
 * @param role joined, alike, sexless or any
 * @param sizes any, same, differ, same-lugs, or pairs such as {@code 0.75/1}
 * @param femaleTurns any, fixed or swivel
 * @param figures any, missing (one has none) or agree (same pitch, diameters within 0.02 in)
 * @param verdict what it says, with {male}, {female}, {size} and {family} still to be filled in
 */
record JointRule(
    String name,
    Halves families,
    String role,
    List<String> sizes,
    String femaleTurns,
    String figures,
    Verdict verdict) {

  /**
   * The families of the two halves.
   *
   * @param males of the entering half: codes, or one group word
   * @param females of the receiving half; "same" and "other" look at the male
   * @param turned whether the rule holds as well with the two exchanged
   */
  private record Halves(List<String> males, List<String> females, boolean turned) {
    boolean fit(Pair pair) {
      return fit(pair.male(), pair.female()) || (turned && fit(pair.female(), pair.male()));
    }

    private boolean fit(End entering, End receiving) {
      if (!inGroup(males, Families.ofCode(entering.family()).orElseThrow())) {
        return false;
      }
      return switch (females.get(0)) {
        case "same" -> entering.family().equals(receiving.family());
        case "other" -> !entering.family().equals(receiving.family());
        default -> inGroup(females, Families.ofCode(receiving.family()).orElseThrow());
      };
    }
  }

  private static final double FIGURES_AGREE_IN = 0.02;
  private static final List<String> HOSE_THREADS = List.of("NH", "GHT", "NPSH");

  static JointRule of(CSVRecord row) {
    return new JointRule(
        row.get("rule"),
        new Halves(
            ReferenceTable.list(row, "male", " "),
            ReferenceTable.list(row, "female", " "),
            row.get("turned").equals("yes")),
        row.get("role"),
        ReferenceTable.list(row, "size", " "),
        row.get("female_turns"),
        row.get("figures"),
        new Verdict(
            Verdict.Outcome.valueOf(row.get("outcome").toUpperCase(Locale.ROOT)),
            Verdict.Seal.valueOf(row.get("seal").toUpperCase(Locale.ROOT)),
            row.get("removable").equals("yes"),
            row.get("engagement"),
            row.get("reason"),
            row.get("source")));
  }

  boolean speaksOf(Pair pair) {
    return roleFits(pair)
        && families.fit(pair)
        && sizeFits(pair)
        && turnsFits(pair)
        && figuresFit(pair);
  }

  private boolean roleFits(Pair pair) {
    return role.equals("any") || role.equals(pair.role());
  }

  private static boolean inGroup(List<String> words, Family family) {
    return switch (words.get(0)) {
      case "any" -> true;
      case "threaded" -> family.threaded();
      case "unthreaded" -> !family.threaded();
      case "regional" -> family.regional();
      case "hose" -> family.regional() || HOSE_THREADS.contains(family.code());
      default -> words.contains(family.code());
    };
  }

  private boolean sizeFits(Pair pair) {
    double a = Math.min(pair.male().sizeIn(), pair.female().sizeIn());
    double b = Math.max(pair.male().sizeIn(), pair.female().sizeIn());
    return switch (sizes.get(0)) {
      case "any" -> true;
      case "same" -> a == b;
      case "differ" -> a != b;
      case "same-lugs" ->
          lugs(pair.male()).isPresent() && lugs(pair.male()).equals(lugs(pair.female()));
      default -> sizes.contains(PlainNumber.of(a) + "/" + PlainNumber.of(b));
    };
  }

  private static OptionalDouble lugs(End end) {
    return CouplingSize.find(end.family(), end.sizeIn())
        .map(CouplingSize::lugSpacingMm)
        .orElse(OptionalDouble.empty());
  }

  private boolean turnsFits(Pair pair) {
    return femaleTurns.equals("any") || pair.female().swivel() == femaleTurns.equals("swivel");
  }

  private boolean figuresFit(Pair pair) {
    if (figures.equals("any")) {
      return true;
    }
    boolean held = figuresHeld(pair.male()) && figuresHeld(pair.female());
    if (figures.equals("missing")) {
      return !held;
    }
    ThreadDimensions male = ThreadTable.find(pair.male()).orElseThrow();
    ThreadDimensions female = ThreadTable.find(pair.female()).orElseThrow();
    return held
        && male.threadsPerInch().equals(female.threadsPerInch())
        && Math.abs(male.majorMaxIn().orElse(0) - female.majorMaxIn().orElse(99))
            <= FIGURES_AGREE_IN;
  }

  /** A thread is held size by size, a coupling without threads as a family. */
  private static boolean figuresHeld(End end) {
    return ThreadTable.find(end)
        .map(ThreadDimensions::figuresHeld)
        .orElseGet(() -> Families.ofCode(end.family()).orElseThrow().figures().figuresHeld());
  }

  /** Two listed ends, the entering half first; of two like halves, the one listed first. */
  record Pair(End male, End female) {
    String role() {
      if (male.gender() == female.gender()) {
        return male.gender() == Gender.SEXLESS ? "sexless" : "alike";
      }
      boolean screwedOrPushed = male.gender() == Gender.MALE && female.gender() == Gender.FEMALE;
      boolean cam = male.gender() == Gender.PLUG && female.gender() == Gender.SOCKET;
      return screwedOrPushed || cam ? "joined" : "mixed";
    }
  }
}
