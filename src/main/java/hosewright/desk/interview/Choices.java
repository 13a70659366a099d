package hosewright.desk.interview;

import hosewright.catalogue.HoseFacts;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.csv.PlainNumber;
import hosewright.job.question.JobField;
import hosewright.job.question.Offer;
import hosewright.thread.End;
import hosewright.thread.Families;
import hosewright.thread.Family;
import hosewright.thread.FamilyKind;
import hosewright.thread.Gender;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Answers that lie near, drawn from the catalogue, the families and the books. */
final class Choices {
  private static final int MOST = 6;
  private static final int MOST_CUSTOMERS = 9;

  private static final List<ItemKind> USUAL_ACCESSORIES =
      List.of(
          ItemKind.WRENCH,
          ItemKind.VALVE,
          ItemKind.GAUGE,
          ItemKind.STRAINER,
          ItemKind.RAMP,
          ItemKind.RESTRAINT);

  private final Desk desk;

  Choices(Desk desk) {
    this.desk = desk;
  }

  /** At most as many as there are letters to pick them by; empty where anything may be said. */
  List<Choice> of(JobField field) {
    return field.offer() == Offer.CUSTOMERS
        ? customers()
        : words(field).stream().limit(MOST).map(Choice::of).toList();
  }

  private List<Choice> customers() {
    return desk.customers().entrySet().stream()
        .limit(MOST_CUSTOMERS)
        .map(one -> new Choice(one.getKey(), one.getKey() + "  " + one.getValue()))
        .toList();
  }

  private List<String> words(JobField field) {
    return switch (field.offer()) {
      case SOURCES -> ends(Choices::source);
      case APPLIANCES -> ends(Choices::appliance);
      case SIZES -> sizes();
      case FAMILIES -> Families.all().stream().map(Family::code).toList();
      case ACCESSORIES -> accessories();
      case CUSTOMERS -> List.copyOf(desk.customers().keySet());
      case DISTRICTS -> desk.districts();
      case NOTHING -> field.choices();
    };
  }

  /** The threads and couplings that most adapters and hoses of the catalogue have. */
  private List<String> ends(Function<End, String> written) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    Map<String, End> standing = new LinkedHashMap<>();
    Stream.of(ItemKind.ADAPTER, ItemKind.HOSE)
        .flatMap(kind -> desk.catalogue().ofKind(kind).stream())
        .map(Item::ends)
        .flatMap(List::stream)
        .forEach(
            end -> {
              counts.merge(end.sizeAndFamily(), 1, Integer::sum);
              standing.putIfAbsent(end.sizeAndFamily(), end);
            });
    return counts.entrySet().stream()
        .sorted(
            Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder())
                .thenComparing(Map.Entry.comparingByKey()))
        .map(entry -> written.apply(standing.get(entry.getKey())))
        .distinct()
        .toList();
  }

  private static String source(End end) {
    return pipe(end)
        ? end.sizeAndFamily() + " male pipe"
        : end.sizeAndFamily() + half(end, Gender.MALE) + (fire(end) ? " hydrant" : " outlet");
  }

  private static String appliance(End end) {
    return pipe(end)
        ? end.sizeAndFamily() + " female pipe"
        : end.sizeAndFamily() + half(end, Gender.FEMALE) + " nozzle";
  }

  private static boolean pipe(End end) {
    return family(end).map(f -> f.kind() == FamilyKind.TAPER_THREAD).orElse(false);
  }

  /** Families that hydrants are made with. */
  private static boolean fire(End end) {
    return family(end)
        .map(f -> f.regional() || f.code().equals("NH") || f.kind() == FamilyKind.SEXLESS)
        .orElse(false);
  }

  private static String half(End end, Gender gender) {
    return family(end).filter(f -> f.halves().genders().contains(gender)).isPresent()
        ? " " + gender.word()
        : "";
  }

  private static Optional<Family> family(End end) {
    return Families.find(end.family());
  }

  private List<String> sizes() {
    return Stream.of(ItemKind.HOSE, ItemKind.BULK_HOSE)
        .flatMap(kind -> desk.catalogue().ofKind(kind).stream())
        .flatMap(item -> item.hose().stream())
        .map(HoseFacts::sizeIn)
        .distinct()
        .sorted()
        .map(size -> PlainNumber.of(size) + " in")
        .toList();
  }

  private List<String> accessories() {
    List<String> kinds = new ArrayList<>();
    for (ItemKind kind : USUAL_ACCESSORIES) {
      if (!desk.catalogue().ofKind(kind).isEmpty()) {
        kinds.add(kind.word());
      }
    }
    return kinds;
  }
}
