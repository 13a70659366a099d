package hosewright.line.plan;

import hosewright.job.question.JobField;
import hosewright.line.model.Check;
import hosewright.line.model.CheckId;
import hosewright.line.plan.PlanFacts.Figure;
import hosewright.line.plan.PlanFacts.Planned;
import hosewright.line.plan.PlanFacts.Words;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A condition as it stands in a table, in plain words: {@code use is drinking}, {@code temperature
 * over 110 F and hose is made up}, {@code check local-thread warns}.
 *
 * <p>A clause is {@code always}; a sentence of {@link PlanFacts#so}; a fact that {@code is} or
 * {@code is not} a word, {@code includes} one, or is {@code over} or {@code under} a figure with
 * its unit; a question of the job that {@code is given} or {@code is open}; a figure of the plan
 * that {@code is known}; or a check that {@code warns} (or worse) or {@code is shown}. A fact is a
 * question of the job by its word, open ones being what is usual, or one of {@link PlanFacts}.
 * Clauses are joined by {@code and}, which binds first, and {@code or}.
 */
final class When {
  private static final Pattern CHECK = Pattern.compile("check (.+?) (warns|is shown)");
  private static final Pattern SAID = Pattern.compile("(.+?) is (given|open|known)");
  private static final Pattern COMPARED =
      Pattern.compile("(.+?) (is not|is|includes|over|under) (.+)");

  private final String field;

  private When(String field) {
    this.field = field;
  }

  /**
   * The condition that a text states.
   *
   * @param field where the text stands, for whoever has to mend it
   * @throws BadInputException naming the first clause that says nothing known
   */
  static Predicate<Planned> read(String field, String text) {
    When when = new When(field);
    Predicate<Planned> any = of -> false;
    for (String side : text.split(" or ", -1)) {
      Predicate<Planned> all = of -> true;
      for (String clause : side.split(" and ", -1)) {
        all = all.and(when.clause(clause.strip()));
      }
      any = any.or(all);
    }
    return any;
  }

  private Predicate<Planned> clause(String clause) {
    if (clause.equals("always")) {
      return of -> true;
    }
    if (PlanFacts.so().containsKey(clause)) {
      return PlanFacts.so().get(clause);
    }
    Matcher check = CHECK.matcher(clause);
    if (check.matches()) {
      return check(check.group(1), check.group(2).equals("warns"));
    }
    Matcher said = SAID.matcher(clause);
    if (said.matches()) {
      if (said.group(2).equals("known")) {
        return known(said.group(1), clause);
      }
      JobField asked = asked(said.group(1), clause);
      boolean given = said.group(2).equals("given");
      return of -> of.job().answers().given(asked) == given;
    }
    Matcher compared = COMPARED.matcher(clause);
    if (compared.matches()) {
      return compared(compared.group(1), compared.group(2), compared.group(3), clause);
    }
    throw refused(
        clause,
        "a clause such as 'use is drinking', 'temperature over 110 F', 'lift is given', 'check"
            + " local-thread warns', or one of "
            + String.join(", ", PlanFacts.so().keySet()),
        Nearest.to(clause, PlanFacts.so().keySet()));
  }

  private Predicate<Planned> check(String word, boolean warns) {
    List<String> words = Arrays.stream(CheckId.values()).map(CheckId::word).toList();
    if (!words.contains(word)) {
      throw refused(word, "a check such as " + String.join(", ", words), Nearest.to(word, words));
    }
    return of ->
        of.checks().stream()
            .filter(check -> check.id().word().equals(word))
            .anyMatch(check -> !warns || check.outcome() != Check.Outcome.PASS);
  }

  private Predicate<Planned> known(String fact, String clause) {
    Figure figure = PlanFacts.figures().get(fact);
    if (figure == null) {
      List<String> names = List.copyOf(PlanFacts.figures().keySet());
      throw refused(
          clause, "a figure such as " + String.join(", ", names), Nearest.to(fact, names));
    }
    return of -> figure.of().apply(of).isPresent();
  }

  private Predicate<Planned> compared(String fact, String how, String with, String clause) {
    Words words = PlanFacts.words().get(fact);
    Figure figure = PlanFacts.figures().get(fact);
    return switch (how) {
      case "is", "includes" -> words != null ? says(words, with) : answers(fact, with, clause);
      case "is not" -> (words != null ? says(words, with) : answers(fact, with, clause)).negate();
      default -> {
        boolean over = how.equals("over");
        yield figure != null
            ? passes(figure, over, figure.reader().apply(field, with))
            : passes(asked(fact, clause), over, with, clause);
      }
    };
  }

  private Predicate<Planned> says(Words words, String word) {
    if (!words.allowed().contains(word)) {
      String allowed = "one of " + String.join(", ", words.allowed());
      throw refused(word, allowed, Nearest.to(word, words.allowed()));
    }
    return of -> words.of().apply(of).contains(word);
  }

  /** An answer is compared as it would be read from a form; a list includes it. */
  private Predicate<Planned> answers(String fact, String with, String clause) {
    JobField asked = asked(fact, clause);
    Object value = value(asked, with);
    return of ->
        of.job()
            .answers()
            .value(asked)
            .filter(
                said ->
                    said.equals(value) || (said instanceof List<?> list && includes(list, value)))
            .isPresent();
  }

  private static boolean includes(List<?> said, Object value) {
    return value instanceof List<?> all ? said.containsAll(all) : said.contains(value);
  }

  private static Predicate<Planned> passes(Figure figure, boolean over, double limit) {
    return of -> {
      OptionalDouble is = figure.of().apply(of);
      return is.isPresent() && (over ? is.getAsDouble() > limit : is.getAsDouble() < limit);
    };
  }

  private Predicate<Planned> passes(JobField asked, boolean over, String with, String clause) {
    if (!(value(asked, with) instanceof Number limit)) {
      throw refused(clause, asked.word() + " is no figure to compare", "");
    }
    return of -> {
      Optional<Object> said = of.job().answers().value(asked);
      return said.isPresent()
          && said.get() instanceof Number is
          && (over
              ? is.doubleValue() > limit.doubleValue()
              : is.doubleValue() < limit.doubleValue());
    };
  }

  private Object value(JobField asked, String text) {
    try {
      return asked.read(text);
    } catch (BadInputException e) {
      Problem first = e.problems().get(0);
      throw refused(first.value(), first.allowed(), first.nearest());
    }
  }

  private JobField asked(String fact, String clause) {
    return JobField.of(fact)
        .orElseThrow(
            () -> {
              List<String> known = new ArrayList<>(JobField.words());
              known.addAll(PlanFacts.words().keySet());
              known.addAll(PlanFacts.figures().keySet());
              return refused(
                  clause,
                  "'" + fact + "' is none of the facts " + String.join(", ", known),
                  Nearest.to(fact, known));
            });
  }

  private BadInputException refused(String value, String allowed, String nearest) {
    return new BadInputException(List.of(new Problem(field, value, allowed, nearest)));
  }
}
