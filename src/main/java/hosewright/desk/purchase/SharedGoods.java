package hosewright.desk.purchase;

import hosewright.csv.PlainNumber;
import hosewright.desk.purchase.PlanPackage.Laid;
import hosewright.desk.purchase.Taken.OwnedKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Says which jobs of a purchase lie where of what there is only so much of. */
final class SharedGoods {
  private final Scarce scarce;

  SharedGoods(Scarce scarce) {
    this.scarce = scarce;
  }

  /** A sentence for each thing that more than one job takes, or that one leaves another without. */
  List<String> told(List<Laid> jobs) {
    Map<String, List<String>> places = new TreeMap<>();
    for (Laid job : jobs) {
      int count = job.wanted().count();
      Taken.laid(job.plan())
          .forEach((kind, each) -> put(places, words(kind), job, each * count, " laid in "));
      scarce
          .taken(job)
          .shelf()
          .forEach(
              (item, all) ->
                  put(
                      places,
                      "%d x %s on the shelf".formatted(scarce.onShelf(item), item),
                      job,
                      all,
                      " for "));
    }
    return places.entrySet().stream()
        .filter(one -> one.getValue().size() > 1 || isLeftWithout(one.getKey(), jobs))
        .map(one -> one.getKey() + ": " + String.join(", ", one.getValue()) + ".")
        .toList();
  }

  private static void put(
      Map<String, List<String>> places, String what, Laid job, int count, String where) {
    places
        .computeIfAbsent(what, any -> new ArrayList<>())
        .add(count + where + job.job().job().title());
  }

  /** Whether a job says that the buyer has them and lays none of them, or fewer than it names. */
  private boolean isLeftWithout(String what, List<Laid> jobs) {
    return jobs.stream()
            .filter(
                job ->
                    job.wanted().job().job().conditions().owned().stream()
                        .map(Scarce::kind)
                        .map(this::words)
                        .anyMatch(what::equals))
            .count()
        > 1;
  }

  private String words(OwnedKind kind) {
    return "The buyer's own %d x %s ft of %s in hose"
        .formatted(
            scarce.has(kind), PlainNumber.of(kind.lengthFt()), PlainNumber.of(kind.sizeIn()));
  }
}
