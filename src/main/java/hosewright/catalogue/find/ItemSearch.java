package hosewright.catalogue.find;

import hosewright.catalogue.ItemKind;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Finds items by what people remember of them: words in any order and spelling, sizes, lengths,
 * ends, pieces of the item number.
 */
public final class ItemSearch {
  private final List<Listing> listings;
  private final Map<String, Integer> vocabulary = new HashMap<>();
  private final List<int[]> words = new ArrayList<>();
  private final List<String> numbers = new ArrayList<>();

  public ItemSearch(List<Listing> listings) {
    this.listings = List.copyOf(listings);
    for (Listing listing : listings) {
      words.add(wordsOf(listing));
      numbers.add(listing.number().toLowerCase(Locale.ROOT));
    }
  }

  /**
   * What was found.
   *
   * @param understood the parts of the question, as they were read
   * @param guessed whether a word was taken for another, as of somebody who misspelt it
   * @param whole whether the items have every part; false when no item has, and these have most
   * @param numbers item numbers, best first
   */
  public record Found(
      List<String> understood, boolean guessed, boolean whole, List<String> numbers) {}

  /** The items that fit a question, best first: those that have every part, else most of them. */
  public Found find(String question, Optional<ItemKind> kind) {
    SearchQuery query = SearchQuery.of(question, this::isNumberPart);
    List<PartScore> scores = new ArrayList<>();
    for (SearchQuery.Part part : query.parts()) {
      int before =
          (int) query.parts().subList(0, scores.size()).stream().filter(part::equals).count();
      scores.add(score(part, before));
    }
    List<Hit> hits = new ArrayList<>();
    int mostParts = 1;
    for (int i = 0; i < listings.size(); i++) {
      if (kind.isPresent() && listings.get(i).kind() != kind.get()) {
        continue;
      }
      int parts = 0;
      double sum = 0;
      for (PartScore part : scores) {
        double score = part.of(i);
        parts += score > 0 ? 1 : 0;
        sum += score;
      }
      if (parts >= mostParts || scores.isEmpty()) {
        mostParts = Math.max(mostParts, parts);
        hits.add(new Hit(i, parts, sum));
      }
    }
    int most = scores.isEmpty() ? 0 : mostParts;
    return new Found(
        scores.stream().map(PartScore::said).toList(),
        scores.stream().anyMatch(PartScore::guessed),
        most == scores.size() || hits.isEmpty(),
        hits.stream()
            .filter(hit -> hit.parts() == most)
            .sorted(bestFirst())
            .map(hit -> listings.get(hit.place()).number())
            .toList());
  }

  private record Hit(int place, int parts, double score) {}

  /** What can still be had comes first among equals; then the order of the catalogue. */
  private Comparator<Hit> bestFirst() {
    return Comparator.comparingDouble((Hit hit) -> -hit.score())
        .thenComparing(hit -> listings.get(hit.place()).shelf().discontinued())
        .thenComparing(hit -> listings.get(hit.place()).shelf().onHand() == 0)
        .thenComparing(Hit::place);
  }

  /** How well one part of the question fits each item: 0 not at all, 1 exactly. */
  private abstract static class PartScore {
    private final String said;
    private final boolean guessed;

    PartScore(String said) {
      this(said, false);
    }

    PartScore(String said, boolean guessed) {
      this.said = said;
      this.guessed = guessed;
    }

    String said() {
      return said;
    }

    /** Whether its word was taken for another. */
    boolean guessed() {
      return guessed;
    }

    abstract double of(int place);
  }

  private PartScore score(SearchQuery.Part part, int rank) {
    if (part instanceof SearchQuery.Whole whole) {
      return byListing(whole.said(), listing -> SearchFit.end(listing.ends(), whole.end(), rank));
    }
    if (part instanceof SearchQuery.Thread thread) {
      return byListing(thread.said(), listing -> fits(listing, thread) ? 1 : 0);
    }
    if (part instanceof SearchQuery.Size size) {
      Integer word = vocabulary.get(size.number());
      double number = Double.parseDouble(size.number());
      return new PartScore(size.said()) {
        @Override
        double of(int place) {
          double fit = SearchFit.size(listings.get(place), number, size.unit());
          return fit == 0 && word != null && has(place, word) ? SearchFit.MENTIONED : fit;
        }
      };
    }
    if (part instanceof SearchQuery.Number number) {
      return byNumber(number.said(), number.said());
    }
    return word(part.said());
  }

  private static boolean fits(Listing listing, SearchQuery.Thread thread) {
    return listing.ends().stream()
        .anyMatch(end -> end.sizeIn() == thread.sizeIn() && end.family().equals(thread.family()));
  }

  private interface ListingScore {
    double of(Listing listing);
  }

  private PartScore byListing(String said, ListingScore score) {
    return new PartScore(said) {
      @Override
      double of(int place) {
        return score.of(listings.get(place));
      }
    };
  }

  private PartScore byNumber(String said, String piece) {
    return new PartScore(said) {
      @Override
      double of(int place) {
        return SearchFit.number(numbers.get(place), piece);
      }
    };
  }

  /** A word as it stands, else as the beginning of longer ones, else as somebody misspelt it. */
  private PartScore word(String typed) {
    Map<String, Double> near = SearchFit.words(typed, vocabulary.keySet());
    if (near.isEmpty() && isNumberPart(typed)) {
      return byNumber(typed, typed);
    }
    if (near.isEmpty()) {
      near = SearchFit.misspelt(typed, vocabulary.keySet());
    }
    double[] weights = new double[vocabulary.size()];
    near.forEach((word, weight) -> weights[vocabulary.get(word)] = weight);
    boolean guessed =
        !near.isEmpty()
            && !near.containsKey(typed)
            && !near.keySet().iterator().next().startsWith(typed);
    String said = guessed ? typed + " as " + String.join(" or ", near.keySet()) : typed;
    return new PartScore(said, guessed) {
      @Override
      double of(int place) {
        double best = 0;
        for (int word : words.get(place)) {
          best = Math.max(best, weights[word]);
        }
        return best;
      }
    };
  }

  private boolean has(int place, int wanted) {
    for (int word : words.get(place)) {
      if (word == wanted) {
        return true;
      }
    }
    return false;
  }

  private boolean isNumberPart(String piece) {
    return piece.length() > 2 && numbers.stream().anyMatch(number -> number.contains(piece));
  }

  private int[] wordsOf(Listing listing) {
    List<String> said = new ArrayList<>(SearchTokens.of(listing.words()));
    said.addAll(List.of(listing.kind().word().split("-")));
    for (End end : listing.ends()) {
      said.add(end.family().toLowerCase(Locale.ROOT));
      said.add(end.gender().word());
      said.add(end.swivel() ? "swivel" : "rigid");
    }
    number(listing.hoseSizeIn(), said);
    number(listing.lengthFt(), said);
    return said.stream()
        .mapToInt(word -> vocabulary.computeIfAbsent(word, w -> vocabulary.size()))
        .distinct()
        .toArray();
  }

  private static void number(OptionalDouble number, List<String> said) {
    if (number.isPresent()) {
      said.add(SearchTokens.written(number.getAsDouble()));
    }
  }
}
