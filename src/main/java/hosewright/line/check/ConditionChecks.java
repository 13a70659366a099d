package hosewright.line.check;

import static hosewright.line.check.Checks.check;
import static hosewright.line.check.Checks.text;

import hosewright.catalogue.MoneyWords;
import hosewright.job.Conditions;
import hosewright.job.Job;
import hosewright.job.Limit;
import hosewright.job.question.OwnedHose;
import hosewright.job.question.Use;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.SectionOption;
import hosewright.line.goods.Availability;
import hosewright.line.goods.Basket;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import hosewright.line.model.Hydraulics;
import hosewright.line.water.SeenPressure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** Checks on the terms that the buyer sets. */
final class ConditionChecks {
  private static final String STATED = "stated in the job";

  private final Job job;
  private final Assembly line;
  private final Hydraulics hydraulics;
  private final List<Basket.Purchase> purchases;

  private ConditionChecks(
      Job job, Assembly line, Hydraulics hydraulics, List<Basket.Purchase> purchases) {
    this.job = job;
    this.line = line;
    this.hydraulics = hydraulics;
    this.purchases = purchases;
  }

  static List<Check> of(
      Job job, Assembly line, Hydraulics hydraulics, List<Basket.Purchase> purchases) {
    ConditionChecks checks = new ConditionChecks(job, line, hydraulics, purchases);
    List<Check> all = new ArrayList<>();
    checks.inTime().ifPresent(all::add);
    if (line.parts().stream().anyMatch(Placed::isOwnedHose)) {
      all.add(checks.ownTested());
      checks.ownMarked().ifPresent(all::add);
    }
    checks.spares().ifPresent(all::add);
    checks.budget().ifPresent(all::add);
    return all;
  }

  private Optional<Check> budget() {
    return job.conditions()
        .budget()
        .map(
            budget -> {
              Money total = Basket.sum(purchases, budget.getCurrencyUnit());
              boolean within = !total.isGreaterThan(budget);
              return check(
                  CheckId.BUDGET,
                  within ? Outcome.PASS : Outcome.FAIL,
                  total.getAmount().doubleValue(),
                  budget.getAmount().doubleValue(),
                  budget.getCurrencyUnit().getCode(),
                  within
                      ? text("%s of the budget is left", MoneyWords.of(budget.minus(total)))
                      : text(
                          "the cheapest line that works costs %s, %s over the budget of %s",
                          MoneyWords.of(total),
                          MoneyWords.of(total.minus(budget)),
                          MoneyWords.of(budget)),
                  STATED);
            });
  }

  private Optional<Check> spares() {
    int wanted = job.conditions().spareSections();
    if (wanted == 0) {
      return Optional.empty();
    }
    int bought = 0;
    boolean sold = true;
    for (int i = 0; i < line.lays().size(); i++) {
      LegShape leg = line.topology().legs().get(i);
      int ofLeg = leg.hose().sparesToBuy(line.lays().get(i), leg.lines(), wanted);
      bought += ofLeg;
      sold &= ofLeg == 0 || leg.hose().spare(line.lays().get(i)).isPresent();
    }
    wanted *= line.lays().size();
    return Optional.of(
        check(
            CheckId.SPARE_SECTIONS,
            sold ? Outcome.PASS : Outcome.FAIL,
            sold ? wanted : wanted - bought,
            wanted,
            "sections",
            !sold
                ? text(
                    "too few are left over, and no hose that serves here is sold to couple to it:"
                        + " %d more",
                    bought)
                : text("%d bought, %d of the customer's own left over", bought, wanted - bought),
            STATED));
  }

  private Optional<Check> inTime() {
    Conditions conditions = job.conditions();
    if (!conditions.stockOnly() && conditions.deliverBy().isEmpty()) {
      return Optional.empty();
    }
    Availability availability = Availability.of(job);
    List<String> late =
        purchases.stream()
            .filter(purchase -> !availability.toBeHad(purchase.item(), purchase.bought()))
            .map(
                purchase ->
                    text(
                        "%d of %s (%d in stock, else %d days)",
                        purchase.bought(),
                        purchase.item().number(),
                        purchase.item().stocking().onHand(),
                        purchase.item().stocking().leadDays()))
            .toList();
    String when =
        conditions.stockOnly() ? "from stock" : "by " + conditions.deliverBy().orElseThrow();
    return Optional.of(
        check(
            conditions.stockOnly() ? CheckId.IN_STOCK : CheckId.THERE_IN_TIME,
            late.isEmpty() ? Outcome.PASS : Outcome.FAIL,
            purchases.size() - late.size(),
            purchases.size(),
            "items",
            late.isEmpty()
                ? "everything can be had " + when + "; bench and road take their time on top"
                : "cannot be had " + when + ": " + String.join(", ", late),
            "stock and lead days of the catalogue"));
  }

  /** The test itself is checked with the hose's ratings; here only that one is known. */
  private Check ownTested() {
    boolean known = ownLaid().stream().allMatch(owned -> owned.testPsi().isPresent());
    double highestPsi =
        hydraulics.calculated()
            ? SeenPressure.along(line, hydraulics.profile()).stream()
                .filter(seen -> seen.part().isOwnedHose())
                .mapToDouble(SeenPressure::highestPsi)
                .max()
                .orElseThrow()
            : 0;
    double leastTestPsi = highestPsi * Limit.SERVICE_TEST_SHARE.value();
    return check(
        CheckId.OWN_HOSE,
        known ? Outcome.PASS : Outcome.WARN,
        leastTestPsi,
        leastTestPsi,
        "psi, test",
        known
            ? "its service test pressure is stated; the date of the test is not known here"
            : text(
                "its rating is not stated: have it service tested to %.0f psi or more before use,"
                    + " and state it as 'tested ... psi'",
                Math.ceil(leastTestPsi - PressureChecks.HAIR_PSI)),
        Limit.SERVICE_TEST_SHARE.source());
  }

  private Optional<Check> ownMarked() {
    Use use = job.service().use();
    if (use == Use.DRINKING) {
      boolean marked = ownLaid().stream().allMatch(ownedHose -> ownedHose.marks().drinking());
      return Optional.of(
          check(
              CheckId.OWN_HOSE_MARKS,
              marked ? Outcome.PASS : Outcome.FAIL,
              marked ? 1 : 0,
              1,
              "",
              marked
                  ? "stated to be marked for drinking water"
                  : "not stated to be marked for drinking water: 'marked drinking' says so",
              STATED));
    }
    if (use.isFire()) {
      boolean marked = ownLaid().stream().allMatch(ownedHose -> ownedHose.marks().fire());
      return Optional.of(
          check(
              CheckId.OWN_HOSE_MARKS,
              marked ? Outcome.PASS : Outcome.WARN,
              marked ? 1 : 0,
              1,
              "",
              marked
                  ? "stated to be marked as fire hose"
                  : "read its jacket: fire service asks for hose marked to NFPA 1961 (now within"
                      + " NFPA 1960)",
              STATED));
    }
    return Optional.empty();
  }

  private List<OwnedHose> ownLaid() {
    List<SectionOption> options = line.topology().hose().options();
    List<OwnedHose> laid = new ArrayList<>();
    for (int i = 0; i < options.size(); i++) {
      if (line.lay().counts().get(i) > 0) {
        options.get(i).owned().ifPresent(laid::add);
      }
    }
    return laid;
  }
}
