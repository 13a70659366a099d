package hosewright.line.plan;

import hosewright.csv.ReferenceTable;
import hosewright.job.Job;
import hosewright.line.model.Check;
import hosewright.line.plan.PlanFacts.Planned;
import hosewright.line.search.Evaluated;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;

/**
 * A caution that goes with some plans, a row of {@code cautions.csv}.
 *
 * @param when the plans it goes with
 * @param sentence with the names of figures in braces
 */
record Caution(Predicate<Planned> when, String sentence) {
  static final String TABLE = "line/cautions.csv";

  private static final Pattern BRACES = Pattern.compile("\\{([^}]*)}");
  private static final List<Caution> ALL =
      ReferenceTable.rows(
          TABLE, row -> of(row.getRecordNumber() + 1, row.get("when"), row.get("text")));

  /**
   * A row as it is written.
   *
   * @param line where it stands in the table
   * @throws BadInputException naming line, column and what is not understood
   */
  static Caution of(long line, String when, String sentence) {
    String where = TABLE + " line " + line;
    Matcher braces = BRACES.matcher(sentence);
    while (braces.find()) {
      if (!CautionFigures.names().contains(braces.group(1))) {
        throw unknown(where + " text", braces.group(1));
      }
    }
    return new Caution(When.read(where + " when", when), sentence);
  }

  private static BadInputException unknown(String where, String figure) {
    Set<String> names = new TreeSet<>(CautionFigures.names());
    return new BadInputException(
        List.of(
            new Problem(
                where,
                "{" + figure + "}",
                "a figure such as " + String.join(", ", names),
                Nearest.to(figure, names))));
  }

  /**
   * The sentences for a plan, in the order of the table, with its figures put in.
   *
   * @param checks every check that the plan will show
   */
  static List<String> forPlan(Job job, Evaluated plan, List<Check> checks) {
    Planned planned = Planned.alone(job, plan, checks);
    return ALL.stream()
        .filter(caution -> caution.when().test(planned))
        .map(caution -> caution.told(planned))
        .toList();
  }

  /**
   * The sentences for the legs of a layout: once what is the same of all that it is said of, else
   * with the legs' names before it.
   *
   * @param legs by their names
   */
  static List<String> forLegs(Map<String, Planned> legs) {
    List<String> sentences = new ArrayList<>();
    for (Caution caution : ALL) {
      Map<String, List<String>> names = new LinkedHashMap<>();
      legs.forEach(
          (name, planned) -> {
            if (caution.when().test(planned)) {
              names.computeIfAbsent(caution.told(planned), told -> new ArrayList<>()).add(name);
            }
          });
      names.forEach(
          (told, of) ->
              sentences.add(
                  names.size() == 1
                      ? told
                      : StringUtils.capitalize(String.join(", ", of)) + ": " + told));
    }
    return sentences;
  }

  /** The sentence with the plan's figures put in. */
  String told(Planned planned) {
    return BRACES
        .matcher(sentence)
        .replaceAll(
            found -> Matcher.quoteReplacement(CautionFigures.text(found.group(1), planned)));
  }
}
