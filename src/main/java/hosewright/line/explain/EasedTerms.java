package hosewright.line.explain;

import static hosewright.line.check.Checks.text;

import hosewright.catalogue.MoneyWords;
import hosewright.csv.PlainNumber;
import hosewright.job.Conditions;
import hosewright.job.Job;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.SectionOption;
import hosewright.line.search.Evaluated;
import hosewright.line.search.Shop;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What would do if the buyer eased one of the terms set: stock, day, weight, own hose. */
public final class EasedTerms {
  private final Shop shop;
  private final Job job;

  /**
   * @param job one that names the day of its prices
   */
  EasedTerms(Shop shop, Job job) {
    this.shop = shop;
    this.job = job;
  }

  List<String> sentences() {
    Conditions terms = job.conditions();
    List<String> sentences = new ArrayList<>();
    if (terms.stockOnly() || terms.deliverBy().isPresent()) {
      laterDay().ifPresent(sentences::add);
    }
    if (terms.heaviestSectionLb().isPresent()) {
      passing(terms.withAnyWeight())
          .ifPresent(
              plan ->
                  sentences.add(
                      text("sections of up to %.0f lb: %s", heaviestLb(plan), inShort(plan))));
    }
    if (!terms.owned().isEmpty()) {
      passing(terms.withNothingOwned())
          .ifPresent(plan -> sentences.add("new hose throughout: " + inShort(plan)));
    }
    return sentences;
  }

  /** The first day by which some line can be had. */
  private Optional<String> laterDay() {
    LocalDate ordered = job.date().orElseThrow();
    Optional<LocalDate> asked =
        job.conditions().deliverBy().filter(by -> !job.conditions().stockOnly());
    List<LocalDate> days =
        shop.catalogue().items().stream()
            .map(item -> item.stocking().leadDays())
            .distinct()
            .sorted()
            .map(ordered::plusDays)
            .filter(day -> asked.isEmpty() || day.isAfter(asked.get()))
            .toList();
    // Where no line does it with all that can ever be had, no day before the last brings one.
    if (days.isEmpty() || !shop.anyPasses(by(days.get(days.size() - 1)))) {
      return Optional.empty();
    }
    return days.stream()
        .flatMap(
            day ->
                shop.passing(by(day)).stream()
                    .map(plan -> text("delivered by %s: %s", day, inShort(plan))))
        .findFirst();
  }

  private Job by(LocalDate day) {
    return job.withConditions(job.conditions().fromAnyShelf(Optional.of(day)));
  }

  private Optional<Evaluated> passing(Conditions eased) {
    return shop.passing(job.withConditions(eased));
  }

  private static double heaviestLb(Evaluated plan) {
    double heaviest = 0;
    for (int leg = 0; leg < plan.assembly().lays().size(); leg++) {
      Lay lay = plan.assembly().lays().get(leg);
      List<SectionOption> options = plan.assembly().topology().legs().get(leg).hose().options();
      for (int i = 0; i < options.size(); i++) {
        if (lay.counts().get(i) > 0) {
          heaviest = Math.max(heaviest, options.get(i).weightLb());
        }
      }
    }
    return Math.ceil(heaviest);
  }

  private static String inShort(Evaluated plan) {
    HoseLine hose = plan.assembly().topology().hose();
    return text(
        "%s in hose (%s) for %s",
        PlainNumber.of(hose.sizeIn()), hose.series(), MoneyWords.of(plan.total()));
  }

  /** What is asked for that narrows the choice of hose, in words; for saying that none is left. */
  public static String narrowing(Job job) {
    Conditions terms = job.conditions();
    List<String> words = new ArrayList<>(List.of("size", "thread", "fluid", "use"));
    if (terms.stockOnly()) {
      words.add("stock");
    }
    terms.deliverBy().ifPresent(day -> words.add("day"));
    terms.heaviestSectionLb().ifPresent(lb -> words.add("section weight"));
    if (!terms.owned().isEmpty()) {
      words.add("own hose");
    }
    String last = words.remove(words.size() - 1);
    return String.join(", ", words) + " and " + last;
  }
}
