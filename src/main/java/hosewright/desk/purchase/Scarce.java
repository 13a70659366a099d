package hosewright.desk.purchase;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.desk.WrittenJob;
import hosewright.desk.purchase.PlanPackage.Laid;
import hosewright.desk.purchase.PlanPackage.Wanted;
import hosewright.desk.purchase.Taken.OwnedKind;
import hosewright.job.question.JobField;
import hosewright.job.question.OwnedHose;
import hosewright.line.goods.Availability;
import hosewright.line.model.Bill;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What a purchase shares: pieces on the shelf, where they can come from nowhere else, and sections
 * that the buyer has. Sections alike that several jobs name are the same sections.
 */
final class Scarce {
  private final Catalogue catalogue;
  private final LocalDate date;
  private final Map<OwnedKind, Integer> owned = new HashMap<>();

  Scarce(Catalogue catalogue, LocalDate date, List<Wanted> jobs) {
    this.catalogue = catalogue;
    this.date = date;
    jobs.forEach(job -> owned(job.job()).forEach((kind, n) -> owned.merge(kind, n, Math::max)));
  }

  /** The sections that a job says the buyer has. */
  private static Map<OwnedKind, Integer> owned(WrittenJob job) {
    Map<OwnedKind, Integer> owned = new HashMap<>();
    job.job()
        .conditions()
        .owned()
        .forEach(hose -> owned.merge(kind(hose), hose.count(), Integer::sum));
    return owned;
  }

  static OwnedKind kind(OwnedHose hose) {
    return new OwnedKind(hose.lengthFt(), hose.sizeIn(), hose.inlet().sizeAndFamily());
  }

  /** What a job takes, as it is laid, however often it is bought. */
  Taken taken(Laid laid) {
    int count = laid.wanted().count();
    Map<String, Integer> shelf = new HashMap<>();
    Availability availability = Availability.of(laid.job().job().on(date));
    for (Bill.Item bought : laid.plan().items()) {
      catalogue
          .item(bought.item())
          .filter(item -> availability.mostOf(item) < Integer.MAX_VALUE)
          .ifPresent(item -> shelf.merge(item.number(), bought.quantity() * count, Integer::sum));
    }
    Map<OwnedKind, Integer> own = new HashMap<>();
    Map<OwnedKind, Integer> laidOwn = Taken.laid(laid.plan());
    int spares = laid.job().job().conditions().spareSections();
    // A section left over serves as a spare, so it is no other job's to lay.
    owned(laid.job())
        .forEach(
            (kind, has) ->
                own.put(kind, count * Math.min(has, laidOwn.getOrDefault(kind, 0) + spares)));
    return new Taken(shelf, own);
  }

  /** What parts alone take: the last pieces of what is no longer made. */
  Taken taken(Map<String, Integer> parts) {
    return new Taken(
        parts.entrySet().stream()
            .filter(part -> catalogue.item(part.getKey()).filter(Item::discontinued).isPresent())
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)),
        Map.of());
  }

  /** Whether there is as much as all take together. */
  boolean suffices(Taken all) {
    return all.shelf().entrySet().stream()
            .allMatch(
                one ->
                    catalogue.item(one.getKey()).orElseThrow().stocking().onHand()
                        >= one.getValue())
        && all.owned().entrySet().stream()
            .allMatch(one -> owned.getOrDefault(one.getKey(), 0) >= one.getValue());
  }

  /** Pieces on a shelf. */
  int onShelf(String item) {
    return catalogue.item(item).map(found -> found.stocking().onHand()).orElse(0);
  }

  /** Sections of a kind that the buyer has. */
  int has(OwnedKind kind) {
    return owned.getOrDefault(kind, 0);
  }

  /** The catalogue with what others leave of each shelf, for one of as many as are bought. */
  Catalogue left(Taken others, int count) {
    return count == 1 && others.shelf().isEmpty()
        ? catalogue
        : catalogue.withStock(
            item ->
                Math.max(
                    0,
                    (item.stocking().onHand() - others.shelf().getOrDefault(item.number(), 0))
                        / count));
  }

  /**
   * The job with the sections that others leave, for one of as many as are bought. The best tested
   * ones go first, since it is not known which of them the others lay.
   */
  WrittenJob left(Wanted wanted, Taken others) {
    List<OwnedHose> named = wanted.job().job().conditions().owned();
    Map<OwnedKind, Integer> left = new HashMap<>();
    for (OwnedKind kind : owned(wanted.job()).keySet()) {
      int all = owned.get(kind) - others.owned().getOrDefault(kind, 0);
      left.put(kind, Math.max(0, all / wanted.count()));
    }
    List<OwnedHose> kept = new ArrayList<>();
    for (OwnedHose hose :
        named.stream()
            .sorted(Comparator.comparingDouble(one -> one.testPsi().orElse(0)))
            .toList()) {
      int count = Math.min(hose.count(), left.get(kind(hose)));
      left.merge(kind(hose), -count, Integer::sum);
      if (count > 0) {
        kept.add(hose.times(count));
      }
    }
    int before = named.stream().mapToInt(OwnedHose::count).sum();
    int after = kept.stream().mapToInt(OwnedHose::count).sum();
    return before == after
        ? wanted.job()
        : wanted
            .job()
            .saying(
                JobField.OWNED,
                kept.stream().map(OwnedHose::words).collect(Collectors.joining(", ")));
  }
}
