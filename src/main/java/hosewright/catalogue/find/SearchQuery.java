package hosewright.catalogue.find;

import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.thread.End;
import hosewright.thread.Families;
import hosewright.thread.Family;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What somebody asks the catalogue for, taken apart.
 *
 * @param parts each narrows the search
 */
record SearchQuery(List<Part> parts) {
  private static final Set<String> SILENT =
      Set.of("x", "by", "to", "for", "with", "a", "an", "the", "and", "of", "on", "inch", "size");
  private static final Set<String> INCHES = Set.of("in", "inch", "inches");
  private static final Set<String> FEET = Set.of("ft", "feet", "foot");
  private static final Set<String> OTHER_UNITS = Set.of("psi", "gpm", "lb", "bar");

  /** The longest end anybody writes has size, family, half and swivel, with a word to spare. */
  private static final int LONGEST_END = 5;

  /** One thing asked for. */
  sealed interface Part permits Number, Word, Whole, Thread, Size {
    /** As it was understood. */
    String said();
  }

  /** Part of an item number. */
  record Number(String said) implements Part {}

  record Word(String said) implements Part {}

  /** A complete end. */
  record Whole(End end) implements Part {
    @Override
    public String said() {
      return end.toString();
    }
  }

  /** A size with a family, its half left open. */
  record Thread(double sizeIn, String family) implements Part {
    @Override
    public String said() {
      return SearchTokens.written(sizeIn) + " " + family;
    }
  }

  /**
   * A number with the unit said behind it.
   *
   * @param unit in, ft, or empty when none was said
   */
  record Size(String number, String unit) implements Part {
    @Override
    public String said() {
      return unit.isEmpty() ? number : number + " " + unit;
    }
  }

  /**
   * Takes a text apart.
   *
   * @param isNumberPart whether some item's number has this in it
   */
  static SearchQuery of(String text, Predicate<String> isNumberPart) {
    List<Part> parts = new ArrayList<>();
    StringBuilder rest = new StringBuilder();
    for (String raw : text.strip().split("\\s+")) {
      String word = raw.toLowerCase(Locale.ROOT);
      boolean mixed = word.matches(".*\\p{L}.*") && word.matches(".*\\d.*");
      if (mixed && word.length() > 2 && isNumberPart.test(word)) {
        parts.add(new Number(word));
      } else {
        rest.append(raw).append(' ');
      }
    }
    List<String> tokens = SearchTokens.of(rest.toString());
    int at = 0;
    while (at < tokens.size()) {
      at += take(tokens, at, parts);
    }
    return new SearchQuery(List.copyOf(parts));
  }

  /** Takes the part that begins here; how many tokens it has. */
  private static int take(List<String> tokens, int at, List<Part> parts) {
    for (int length = Math.min(LONGEST_END, tokens.size() - at); length > 1; length--) {
      Optional<End> end = end(tokens.subList(at, at + length));
      if (end.isPresent()) {
        parts.add(new Whole(end.get()));
        return length;
      }
    }
    String token = tokens.get(at);
    String following = at + 1 < tokens.size() ? tokens.get(at + 1) : "";
    if (SearchTokens.isNumber(token)) {
      return number(token, following, parts);
    }
    if (!SILENT.contains(token)) {
      parts.add(
          new Word(Families.find(token).map(Family::code).orElse(token).toLowerCase(Locale.ROOT)));
    }
    return 1;
  }

  private static int number(String token, String following, List<Part> parts) {
    Optional<Family> family = Families.find(following);
    if (family.isPresent()) {
      parts.add(new Thread(Double.parseDouble(token), family.get().code()));
      return 2;
    }
    if (following.equals("mm")) {
      parts.add(new Size(inches(token), "in"));
      return 2;
    }
    boolean inches = INCHES.contains(following);
    boolean feet = FEET.contains(following);
    parts.add(new Size(token, inches ? "in" : feet ? "ft" : ""));
    return inches || feet || OTHER_UNITS.contains(following) ? 2 : 1;
  }

  private static String inches(String millimetres) {
    try {
      return SearchTokens.written(Measures.sizeIn("size", millimetres + " mm"));
    } catch (BadInputException e) {
      return millimetres;
    }
  }

  /** The end these tokens write, when each of its outer tokens is needed for it. */
  private static Optional<End> end(List<String> tokens) {
    Optional<End> end = parsed(tokens);
    boolean tight =
        end.isPresent()
            && !end.equals(parsed(tokens.subList(1, tokens.size())))
            && !end.equals(parsed(tokens.subList(0, tokens.size() - 1)));
    return tight ? end : Optional.empty();
  }

  private static Optional<End> parsed(List<String> tokens) {
    if (tokens.stream().noneMatch(SearchTokens::isNumber)) {
      return Optional.empty();
    }
    try {
      return Optional.of(End.parse(String.join(" ", tokens)));
    } catch (BadInputException e) {
      return Optional.empty();
    }
  }
}
