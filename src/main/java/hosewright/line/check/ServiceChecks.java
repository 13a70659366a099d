package hosewright.line.check;

import static hosewright.line.check.Checks.check;
import static hosewright.line.check.Checks.text;

import hosewright.catalogue.ItemKind;
import hosewright.job.Job;
import hosewright.job.question.ApplianceKind;
import hosewright.job.question.SourceKind;
import hosewright.job.question.Use;
import hosewright.line.assembly.Assembly;
import hosewright.line.goods.Basket;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import hosewright.line.model.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Checks on what the line is used for, and on whether its parts can be had. */
public final class ServiceChecks {
  private ServiceChecks() {}

  static List<Check> of(Job job, Assembly line, List<Basket.Purchase> purchases) {
    List<Check> checks = new ArrayList<>();
    boolean anyBought =
        line.parts().stream().anyMatch(part -> part.role() == Role.HOSE && !part.isOwnedHose());
    if (job.service().use().isFire() && anyBought && job.source() != SourceKind.OPEN_WATER) {
      checks.add(fireMarked(line));
    }
    if (job.service().use() == Use.DRINKING) {
      checks.add(drinkingMarked());
    }
    backflow(job, purchases).ifPresent(checks::add);
    GasketCheck.of(job, purchases).ifPresent(checks::add);
    if (job.appliance() == ApplianceKind.TANK && fromMain(job)) {
      checks.add(
          check(
              CheckId.AIR_GAP,
              Outcome.WARN,
              0,
              0,
              "",
              "fill the tank through an air gap, so that its water cannot run back",
              Checks.PRACTICE));
    }
    if (purchases.stream().anyMatch(purchase -> purchase.item().discontinued())) {
      checks.add(discontinued(purchases));
    }
    return checks;
  }

  /** Whether what runs back would run into water that others draw. */
  public static boolean fromMain(Job job) {
    return job.source() == SourceKind.HYDRANT
        || job.source() == SourceKind.PIPE
        || job.source() == SourceKind.OUTLET
        || job.service().use() == Use.DRINKING;
  }

  /** Hose without the mark was never considered, so this can only pass. */
  private static Check fireMarked(Assembly line) {
    return check(
        CheckId.FIRE_HOSE_MARK,
        Outcome.PASS,
        1,
        1,
        "",
        "the hose is marked to "
            + line.topology().legs().stream()
                .map(leg -> leg.hose().finish().hoseMarkedTo())
                .distinct()
                .collect(Collectors.joining(" and ")),
        "NFPA 1961 (now within NFPA 1960)");
  }

  private static Check drinkingMarked() {
    return check(
        CheckId.DRINKING_WATER_MARKS,
        Outcome.PASS,
        1,
        1,
        "",
        "every part in the water's way is marked for drinking water",
        "NSF/ANSI/CAN 61, as asked for by the AWWA field guide, p.38");
  }

  private static Optional<Check> backflow(Job job, List<Basket.Purchase> purchases) {
    boolean drinking = job.service().use() == Use.DRINKING;
    boolean fromMain = job.source() == SourceKind.HYDRANT;
    if (!drinking && (!fromMain || job.service().use().isFire())) {
      return Optional.empty();
    }
    boolean protectedMain =
        purchases.stream().anyMatch(purchase -> purchase.item().kind() == ItemKind.BACKFLOW);
    Outcome missing = drinking ? Outcome.FAIL : Outcome.WARN;
    return Optional.of(
        check(
            CheckId.BACKFLOW_PROTECTION,
            protectedMain ? Outcome.PASS : missing,
            protectedMain ? 1 : 0,
            1,
            "",
            protectedMain
                ? "a backflow preventer is in the plan"
                : "nothing keeps water from running back into the main: add accessories: backflow",
            Checks.PRACTICE));
  }

  private static Check discontinued(List<Basket.Purchase> purchases) {
    List<Basket.Purchase> last =
        purchases.stream().filter(purchase -> purchase.item().discontinued()).toList();
    List<String> tooFew =
        last.stream()
            .filter(purchase -> !purchase.item().toBeHad(purchase.bought()))
            .map(purchase -> purchase.item().number())
            .toList();
    List<String> numbers = last.stream().map(purchase -> purchase.item().number()).toList();
    return check(
        CheckId.DISCONTINUED_ITEMS,
        tooFew.isEmpty() ? Outcome.WARN : Outcome.FAIL,
        numbers.size(),
        0,
        "items",
        tooFew.isEmpty()
            ? text("sold from stock only: %s", String.join(", ", numbers))
            : text("not enough left in stock of %s", String.join(", ", tooFew)),
        Checks.PRACTICE);
  }
}
