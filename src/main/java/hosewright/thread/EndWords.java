package hosewright.thread;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the words and numbers of a written end say, before it is decided which end they mean. */
final class EndWords {
  private static final Map<String, Gender> HALVES =
      Map.ofEntries(
          Map.entry("m", Gender.MALE),
          Map.entry("male", Gender.MALE),
          Map.entry("spigot", Gender.MALE),
          Map.entry("f", Gender.FEMALE),
          Map.entry("fem", Gender.FEMALE),
          Map.entry("female", Gender.FEMALE),
          Map.entry("fs", Gender.FEMALE),
          Map.entry("plug", Gender.PLUG),
          Map.entry("adapter", Gender.PLUG),
          Map.entry("adaptor", Gender.PLUG),
          Map.entry("socket", Gender.SOCKET),
          Map.entry("coupler", Gender.SOCKET));
  private static final Set<String> SWIVEL = Set.of("swivel", "sw", "fs");

  /** A long handle is what a big female swivel is turned by. Common practice, no source. */
  private static final Pattern LONG_HANDLE = Pattern.compile("\\blong[ -]handled?\\b");

  private static final Set<String> FIXED = Set.of("fixed", "rigid");
  private static final Set<String> SILENT =
      Set.of(
          "thread",
          "threads",
          "threaded",
          "nominal",
          "end",
          "size",
          "hose",
          "fire",
          "coupling",
          "half",
          "fitting");
  private static final Set<String> SIZE_LETTERS = Set.of("a", "b", "c", "d");

  private static final String DECIMAL = "\\d+(?:\\.\\d+)?|\\.\\d+";
  private static final Pattern TPI =
      Pattern.compile("(?<tpi>" + DECIMAL + ")\\s*(?:tpi|threads per inch)(?![a-z])");
  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<dn>dn\\s*)?(?:(?:(?<whole>\\d+)[\\s-]+)?(?<top>\\d+)/(?<bottom>\\d+)|(?<decimal>"
              + DECIMAL
              + "))(?:\\s*(?<unit>mm(?![a-z])|inch(?:es)?(?![a-z])|in\\.?(?![a-z])|\"))?"
              + "(?:\\s*-\\s*(?<tpi>\\d+(?:\\.\\d+)?)(?![\\d/.]))?");
  private static final Pattern BEFORE_FRACTION =
      Pattern.compile("(?<=\\d)(?=[\\u00BC-\\u00BE\\u2150-\\u215E])");
  private static final Pattern DASH = Pattern.compile("[\\u2010-\\u2015\\u2212_]");
  private static final Pattern INCH_MARK =
      Pattern.compile("[\\u201C\\u201D\\u2033]|''|\\u2032\\u2032|\\u2019\\u2019");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");
  private static final Pattern WORD = Pattern.compile("[a-z]+");
  private static final Pattern GAP = Pattern.compile("[\\s,;:().-]+");

  /** Names with a space, digit or sign in them, longest first so that none hides in another. */
  private static final Pattern PHRASES = phrases();

  final List<Double> sizesIn = new ArrayList<>();
  final List<Double> sizesMm = new ArrayList<>();
  final List<Double> threadsPerInch = new ArrayList<>();
  final Set<Family> families = new LinkedHashSet<>();
  final Set<Gender> genders = new LinkedHashSet<>();
  final List<String> letters = new ArrayList<>();
  final List<String> ambiguous = new ArrayList<>();
  final List<String> unknown = new ArrayList<>();
  boolean swivel;
  boolean fixed;
  boolean bareF;

  private EndWords() {}

  static EndWords of(String text) {
    EndWords words = new EndWords();
    String rest = words.takePhrases(words.takeLongHandle(plain(text)));
    Matcher matcher = TPI.matcher(rest);
    if (matcher.find()) {
      words.threadsPerInch.add(Double.valueOf(matcher.group("tpi")));
      rest = rest.substring(0, matcher.start()) + " " + rest.substring(matcher.end());
    }
    words.takeTokens(rest);
    return words;
  }

  /** Every word that is understood, to find the nearest to one that is not. */
  static List<String> vocabulary() {
    List<String> words = new ArrayList<>(HALVES.keySet());
    words.addAll(SWIVEL);
    for (Family family : Families.all()) {
      words.add(family.code());
      words.addAll(family.halves().aliases().keySet());
    }
    return words.stream().filter(w -> w.length() > 1).sorted().toList();
  }

  /** Lower case, with fractions, dashes and inch marks in their plain spelling. */
  private static String plain(String text) {
    String spaced = BEFORE_FRACTION.matcher(text).replaceAll(" ");
    String spelled = Normalizer.normalize(spaced, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
    String dashed = DASH.matcher(spelled.replace('\u2044', '/')).replaceAll("-");
    String marked = INCH_MARK.matcher(dashed).replaceAll("\"");
    return DECIMAL_COMMA.matcher(marked).replaceAll(".");
  }

  private static Pattern phrases() {
    String names =
        Families.all().stream()
            .flatMap(
                f ->
                    Stream.concat(
                        f.halves().aliases().keySet().stream(),
                        Stream.of(f.code().toLowerCase(Locale.ROOT))))
            .filter(name -> !WORD.matcher(name).matches())
            .sorted(Comparator.comparingInt(String::length).reversed())
            .map(Pattern::quote)
            .collect(Collectors.joining("|"));
    return Pattern.compile("(?<![a-z0-9])(?:" + names + ")(?![a-z0-9])");
  }

  private String takeLongHandle(String text) {
    String rest = LONG_HANDLE.matcher(text).replaceAll(" ");
    if (!rest.equals(text)) {
      swivel = true;
    }
    return rest;
  }

  private String takePhrases(String text) {
    return PHRASES
        .matcher(text)
        .replaceAll(
            phrase -> {
              takeFamily(phrase.group());
              return " ";
            });
  }

  private void takeTokens(String text) {
    Matcher number = NUMBER.matcher(text);
    Matcher word = WORD.matcher(text);
    Matcher gap = GAP.matcher(text);
    int at = 0;
    while (at < text.length()) {
      if (gap.region(at, text.length()).lookingAt()) {
        at = gap.end();
      } else if (number.region(at, text.length()).lookingAt()) {
        takeNumber(number);
        at = number.end();
      } else if (word.region(at, text.length()).lookingAt()) {
        takeWord(word.group());
        at = word.end();
      } else {
        unknown.add(text.substring(at, at + 1));
        at++;
      }
    }
  }

  private void takeNumber(Matcher number) {
    double value;
    if (number.group("decimal") != null) {
      value = Double.parseDouble(number.group("decimal"));
    } else {
      double whole = number.group("whole") == null ? 0 : Double.parseDouble(number.group("whole"));
      value =
          whole
              + Double.parseDouble(number.group("top"))
                  / Double.parseDouble(number.group("bottom"));
    }
    boolean metric = number.group("dn") != null || "mm".equals(number.group("unit"));
    (metric ? sizesMm : sizesIn).add(value);
    if (number.group("tpi") != null) {
      threadsPerInch.add(Double.valueOf(number.group("tpi")));
    }
  }

  private void takeWord(String word) {
    boolean understood = takeHalf(word);
    if (!understood && SIZE_LETTERS.contains(word)) {
      letters.add(word);
    } else if (!understood && !SILENT.contains(word) && !takeFamily(word)) {
      Gender prefix = HALVES.get(word.substring(0, 1));
      if (prefix != null && word.length() > 2 && takeFamily(word.substring(1))) {
        genders.add(prefix);
      } else if (AmbiguousName.find(word).isPresent()) {
        ambiguous.add(word);
      } else {
        unknown.add(word);
      }
    }
  }

  private boolean takeHalf(String word) {
    Gender half = HALVES.get(word);
    if (half != null) {
      genders.add(half);
      bareF |= word.equals("f");
    }
    swivel |= SWIVEL.contains(word);
    fixed |= FIXED.contains(word);
    return half != null || SWIVEL.contains(word) || FIXED.contains(word);
  }

  private boolean takeFamily(String name) {
    Optional<Family> family = Families.find(name);
    family.ifPresent(
        f -> {
          families.add(f);
          f.halves().aliases().getOrDefault(name, Optional.empty()).ifPresent(genders::add);
        });
    return family.isPresent();
  }
}
