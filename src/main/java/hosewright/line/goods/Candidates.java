package hosewright.line.goods;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.Sort;
import hosewright.job.Job;
import hosewright.job.question.Asked;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** The items a word may stand for, in a job that may use them. */
final class Candidates {
  /** Kinds that never touch the water. */
  private static final Set<ItemKind> DRY =
      EnumSet.of(ItemKind.WRENCH, ItemKind.RAMP, ItemKind.RESTRAINT);

  /** Kinds that stand in the water's way when they have two ends. */
  private static final Set<ItemKind> IN_LINE =
      EnumSet.of(
          ItemKind.VALVE, ItemKind.METER, ItemKind.BACKFLOW, ItemKind.GAUGE, ItemKind.STRAINER);

  private final Catalogue catalogue;
  private final Eligibility eligibility;
  private final NozzleFit nozzles;
  private final boolean shutoffAsked;
  private final Map<String, Meant> meant = new HashMap<>();
  private final Map<String, List<List<Item>>> eligible = new HashMap<>();

  Candidates(Job job, Catalogue catalogue, Eligibility eligibility) {
    this.catalogue = catalogue;
    this.eligibility = eligibility;
    this.nozzles = new NozzleFit(job);
    this.shutoffAsked =
        job.accessories().stream()
            .map(wanted -> meant(Asked.of(wanted).what()))
            .anyMatch(asked -> asked.sorts().contains(Sort.NOZZLE_SHUTOFF));
  }

  /**
   * What a word means.
   *
   * @throws hosewright.problem.BadInputException when it means nothing
   */
  Meant meant(String what) {
    return meant.computeIfAbsent(what, word -> Meant.of(word, catalogue));
  }

  /**
   * Of the sorts meant, those of the first rank of which something fits; where only a kind was
   * named and no sort of it is sold, what does not say its sort.
   */
  List<Item> fitting(Meant asked, Predicate<Item> fits) {
    if (asked.item().isPresent()) {
      return List.of(asked.item().get());
    }
    return eligible.computeIfAbsent(asked.what(), what -> eligible(asked)).stream()
        .map(rank -> rank.stream().filter(fits).toList())
        .filter(found -> !found.isEmpty())
        .findFirst()
        .orElse(List.of());
  }

  /** What may be used of each rank, those first that are meant first. */
  private List<List<Item>> eligible(Meant asked) {
    List<List<Item>> ranks = new ArrayList<>();
    for (List<Sort> rank : asked.ranks()) {
      ranks.add(eligible(asked, item -> rank.contains(item.sort()) && forUse(item, asked)));
    }
    if (asked.plain()) {
      ranks.add(eligible(asked, item -> item.sort() == Sort.UNKNOWN));
    }
    return ranks;
  }

  private List<Item> eligible(Meant asked, Predicate<Item> meant) {
    return catalogue.ofKind(asked.kind()).stream().filter(meant).filter(this::eligible).toList();
  }

  private boolean forUse(Item item, Meant asked) {
    return !asked.plain()
        || item.kind() != ItemKind.NOZZLE
        || nozzles.forUse(item.sort(), shutoffAsked);
  }

  private boolean eligible(Item item) {
    return DRY.contains(item.kind()) ? eligibility.toBeHad(item) : eligibility.wetted(item);
  }

  /** The items that stand in the line where this is meant; empty where it does not stand in it. */
  List<Item> inLine(Meant asked) {
    return IN_LINE.contains(asked.kind())
        ? fitting(asked, item -> true).stream().filter(Candidates::standsInLine).toList()
        : List.of();
  }

  /** Whether the kind is one that stands in the line. */
  static boolean standsInLine(ItemKind kind) {
    return IN_LINE.contains(kind);
  }

  private static boolean standsInLine(Item item) {
    return IN_LINE.contains(item.kind()) && item.ends().size() == 2;
  }
}
