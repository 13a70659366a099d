package hosewright.paper.quote;

import hosewright.line.model.Check;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Unpriced;
import hosewright.paper.page.PrintedMoney;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The sentences every paper of a quote carries: terms and cautions. */
final class PrintedTerms {
  static final String CAUTIONS = "Cautions";

  private PrintedTerms() {}

  /** Headings and their sentences in the order papers show them; some may be empty. */
  static Map<String, List<String>> sections(Quote quote) {
    Map<String, List<String>> sections = new LinkedHashMap<>();
    sections.put("You may also have, not in the total", offers(quote));
    sections.put(
        "Still to be sourced, not in the total",
        quote.stillToSource().stream().map(Unpriced::words).toList());
    sections.put(
        "Accessories, where each stands and why",
        quote.groups().stream()
            .flatMap(
                group ->
                    group.plan().bill().accessories().stream()
                        .map(one -> GroupWords.before(quote, group) + one.sentence() + "."))
            .toList());
    sections.put("Notes", quote.offer().amendments().notes());
    sections.put("Terms", of(quote));
    sections.put(CAUTIONS, cautions(quote));
    return sections;
  }

  /** Each line beside the total, as a sentence. */
  static List<String> offers(Quote quote) {
    return quote.offeredAlone().stream()
        .map(
            offer -> {
              QuoteLine line = offer.line();
              return "Line %d, %s: %d %s %s%s at %s, together %s%s"
                  .formatted(
                      line.position(),
                      offer.words(),
                      line.quantity(),
                      line.goods().unit(),
                      line.goods().item().isEmpty() ? "" : line.goods().item() + ", ",
                      line.goods().description(),
                      PrintedMoney.words(line.price().unitPrice()),
                      PrintedMoney.words(line.price().extended()),
                      line.note().map(note -> " (" + note + ")").orElse(""));
            })
        .toList();
  }

  static List<String> of(Quote quote) {
    List<String> terms = new ArrayList<>();
    terms.add(
        "Prices are firm until "
            + quote.validity().validUntil()
            + " in "
            + quote.total().getCurrencyUnit().getCode()
            + (quote.groups().size() == 1
                ? ", each at the price break of its quantity."
                : ", each at the price break of all of its item in the total."));
    if (quote.savedTogether().isPositive()) {
      terms.add(
          "Bought together these goods cost "
              + PrintedMoney.words(quote.savedTogether())
              + " less than group by group.");
    }
    terms.add(
        quote.validity().leadDays() == 0
            ? "Delivery: from stock."
            : "Delivery: " + lead(quote) + " from a firm order.");
    terms.add(
        "Freight: "
            + quote.totals().charging().freightNote()
            + ". It stays as quoted when a quantity is changed in the workbook.");
    terms.add("Tax: " + ended(quote.totals().charging().taxNote()));
    terms.add("Should a unit price and its extension disagree, the unit price holds.");
    terms.addAll(quote.offer().amendments().terms());
    return terms;
  }

  /** How long the buyer waits. */
  static String lead(Quote quote) {
    return switch (quote.validity().leadDays()) {
      case 0 -> "from stock";
      case 1 -> "1 calendar day";
      default -> quote.validity().leadDays() + " calendar days";
    };
  }

  /** The plan's cautions, with what fails said first. */
  static List<String> cautions(Quote quote) {
    Set<String> cautions = new LinkedHashSet<>();
    for (Group group : quote.groups()) {
      shortfalls(quote, group).forEach(cautions::add);
    }
    // What holds for several lines is said once, with their names or, of all, without.
    Map<String, List<Group>> said = new LinkedHashMap<>();
    for (Group group : quote.groups()) {
      group
          .plan()
          .cautions()
          .forEach(sentence -> said.computeIfAbsent(sentence, any -> new ArrayList<>()).add(group));
    }
    said.forEach(
        (sentence, groups) ->
            cautions.add(
                (isOfAll(quote, sentence) ? "" : GroupWords.before(quote, groups)) + sentence));
    cautions.add(
        "Figures are for planning. Local codes, the authority having jurisdiction and a licensed "
            + "engineer decide where they apply; measure the threads and the pressure on site.");
    return List.copyOf(cautions);
  }

  private static boolean isOfAll(Quote quote, String caution) {
    return quote.groups().stream()
        .filter(Group::laid)
        .allMatch(group -> group.plan().cautions().contains(caution));
  }

  private static List<String> shortfalls(Quote quote, Group group) {
    LinePlan plan = group.plan();
    String which = GroupWords.before(quote, group);
    List<String> sentences = new ArrayList<>();
    plan.limitedBy()
        .ifPresent(limit -> sentences.add(which + "This line falls short: " + ended(limit)));
    plan.checks().stream()
        .filter(check -> check.outcome() == Check.Outcome.FAIL)
        .filter(check -> plan.limitedBy().filter(l -> l.contains(check.note())).isEmpty())
        .map(check -> which + "Fails a check: " + check.name() + ". " + ended(check.note()))
        .forEach(sentences::add);
    return sentences;
  }

  static String ended(String sentence) {
    String trimmed = sentence.strip();
    return trimmed.isEmpty() || trimmed.endsWith(".") ? trimmed : trimmed + ".";
  }
}
