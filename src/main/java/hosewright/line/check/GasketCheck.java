package hosewright.line.check;

import static hosewright.line.check.Checks.check;
import static hosewright.line.check.Checks.text;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.job.Job;
import hosewright.line.goods.Basket;
import hosewright.line.goods.GasketMaterial;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Whether the gaskets bought suit the fluid and how warm it is, and on what that rests. Those that
 * come fitted are of their makers' choice: nothing is known of them here.
 */
final class GasketCheck {
  private GasketCheck() {}

  /**
   * The check for a plan.
   *
   * @return empty where no gasket is bought
   */
  static Optional<Check> of(Job job, List<Basket.Purchase> purchases) {
    List<Item> gaskets =
        purchases.stream()
            .map(Basket.Purchase::item)
            .filter(item -> item.kind() == ItemKind.GASKET)
            .toList();
    if (gaskets.isEmpty()) {
      return Optional.empty();
    }
    double waterF = job.service().temperatureOrUsualF();
    List<GasketMaterial> known = new ArrayList<>();
    TreeSet<String> unknown = new TreeSet<>();
    for (Item gasket : gaskets) {
      GasketMaterial.of(gasket).ifPresentOrElse(known::add, () -> unknown.add(gasket.material()));
    }
    double mostF = known.stream().mapToDouble(GasketMaterial::mostF).min().orElse(waterF);
    boolean bears = waterF <= mostF;
    boolean sure = unknown.isEmpty() || job.service().temperatureF().isEmpty();
    return Optional.of(
        check(
            CheckId.GASKETS,
            bears && sure ? Outcome.PASS : Outcome.WARN,
            waterF,
            mostF,
            "°F",
            note(job, known, unknown, bears && sure),
            known.stream()
                .map(GasketMaterial::source)
                .distinct()
                .collect(Collectors.joining("; "))
                .replaceFirst("^$", Checks.PRACTICE)));
  }

  private static String note(
      Job job, List<GasketMaterial> known, TreeSet<String> unknown, boolean good) {
    List<String> basis = new ArrayList<>();
    known.stream()
        .distinct()
        .sorted(Comparator.comparing(GasketMaterial::material))
        .forEach(
            material -> basis.add(text("%s up to %.0f °F", material.material(), material.mostF())));
    unknown.forEach(material -> basis.add(material + ", of which no limit is known"));
    return text(
        "gaskets bought are marked for %s: %s%s",
        job.service().fluid(),
        String.join("; ", basis),
        good ? "" : ": ask their maker for gaskets that bear it");
  }
}
