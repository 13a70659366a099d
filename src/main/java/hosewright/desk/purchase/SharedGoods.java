package hosewright.desk.purchase;

import hosewright.csv.PlainNumber;
import hosewright.desk.purchase.PlanPackage.Laid;
import hosewright.desk.purchase.Taken.OwnedKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Says which jobs of a purchase lie where of what there is only so much of. */
final class SharedGoods {
  private final Scarce scarce;

  SharedGoods(Scarce scarce) {
    this.scarce = scarce;
  }

  /** A sentence for each thing that more than one job takes, or that one leaves another without. */
  List<String> told(List<Laid> jobs) {
    Map<String, List<String>> onShelf = new TreeMap<>();
    Map<OwnedKind, List<String>> owned = new HashMap<>();
    for (Laid job : jobs) {
      int count = job.wanted().count();
      scarce
          .taken(job)
          .shelf()
          .forEach((item, all) -> add(onShelf, item, place(job, all, " for ")));
      Taken.laid(job.plan())
          .forEach((kind, each) -> add(owned, kind, place(job, each * count, " laid in ")));
    }
    return Stream.concat(
            onShelf.entrySet().stream()
                .filter(one -> one.getValue().size() > 1)
                .map(one -> sentence(words(one.getKey()), one.getValue())),
            owned.entrySet().stream()
                .filter(one -> one.getValue().size() > 1 || isNamedTwice(one.getKey(), jobs))
                .map(one -> sentence(words(one.getKey()), one.getValue()))
                .sorted())
        .toList();
  }

  private static <K> void add(Map<K, List<String>> places, K what, String place) {
    places.computeIfAbsent(what, any -> new ArrayList<>()).add(place);
  }

  private static String place(Laid job, int count, String where) {
    return count + where + job.job().job().title();
  }

  private static String sentence(String what, List<String> places) {
    return what + ": " + String.join(", ", places) + ".";
  }

  /** Whether several jobs say that the buyer has them: who lays none is told where they lie. */
  private static boolean isNamedTwice(OwnedKind kind, List<Laid> jobs) {
    return jobs.stream()
            .filter(
                job ->
                    job.wanted().job().job().conditions().owned().stream()
                        .map(Scarce::kind)
                        .anyMatch(kind::equals))
            .count()
        > 1;
  }

  private String words(String item) {
    return "%d x %s on the shelf".formatted(scarce.onShelf(item), item);
  }

  private String words(OwnedKind kind) {
    return "The buyer's own %d x %s ft of %s in hose"
        .formatted(
            scarce.has(kind), PlainNumber.of(kind.lengthFt()), PlainNumber.of(kind.sizeIn()));
  }
}
