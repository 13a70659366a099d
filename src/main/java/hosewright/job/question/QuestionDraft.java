package hosewright.job.question;

import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * A question of a job while it is written down, a clause at a time.
 *
 * @param <T> what an answer is read as
 */
final class QuestionDraft<T> {
  final String word;
  final String placeholder;
  final BiFunction<String, String, T> reader;
  final Sort sort;
  final List<String> words;
  String meaning = "";
  String example = "";
  Predicate<Map<JobField, String>> required = answers -> false;
  boolean stays;
  Offer offer = Offer.NOTHING;
  Asking asking;
  WhenOpen whenOpen = WhenOpen.nothing();

  /** What an answer looks like. */
  enum Sort {
    TEXT,
    /** A number with a unit. */
    MEASURE,
    /** One of a few words. */
    WORD,
    /** Yes or no. */
    FLAG
  }

  private QuestionDraft(
      String word,
      String placeholder,
      BiFunction<String, String, T> reader,
      Sort sort,
      List<String> words) {
    this.word = word;
    this.placeholder = placeholder;
    this.reader = reader;
    this.sort = sort;
    this.words = List.copyOf(words);
    this.asking = Asking.always("");
  }

  /**
   * A question whose answer is no measure.
   *
   * @param reader what an answer is, given the field's name and the text; refuses with what is
   *     allowed
   */
  static <T> QuestionDraft<T> plain(
      String word, String placeholder, BiFunction<String, String, T> reader) {
    return new QuestionDraft<>(word, placeholder, reader, Sort.TEXT, List.of());
  }

  /** A question whose answer is a number with a unit. */
  static <T> QuestionDraft<T> measured(
      String word, String placeholder, BiFunction<String, String, T> reader) {
    return new QuestionDraft<>(word, placeholder, reader, Sort.MEASURE, List.of());
  }

  /** A question whose answer is one of a few words. */
  static <T> QuestionDraft<T> oneOf(
      String word, String placeholder, List<String> words, Function<String, T> meant) {
    return new QuestionDraft<>(
        word,
        placeholder,
        AnswerReading.notWarmth(
            (field, text) -> meant.apply(AnswerReading.oneOf(field, text, words))),
        Sort.WORD,
        words);
  }

  /** A question that is answered by yes or no. */
  static QuestionDraft<Boolean> yesOrNo(String word) {
    return new QuestionDraft<>(word, "YES", AnswerReading::yes, Sort.FLAG, List.of());
  }

  /** What it says in a few words, and something that may be typed there. */
  QuestionDraft<T> means(String sentence, String such) {
    meaning = sentence;
    example = such;
    return this;
  }

  QuestionDraft<T> required() {
    return requiredUnless(answers -> false);
  }

  /** Required, but where other answers say as much. */
  QuestionDraft<T> requiredUnless(Predicate<Map<JobField, String>> saidElsewhere) {
    required = saidElsewhere.negate();
    return this;
  }

  /** That it stays as it is when a quote is revised. */
  QuestionDraft<T> stays() {
    stays = true;
    return this;
  }

  QuestionDraft<T> offering(Offer of) {
    offer = of;
    return this;
  }

  /** In other words than its meaning, which is what is asked otherwise. */
  QuestionDraft<T> asks(String question) {
    asking = Asking.always(question);
    return this;
  }

  /** Too seldom wanted to ask everybody: it is said unasked or not at all. */
  QuestionDraft<T> unasked() {
    asking = Asking.never();
    return this;
  }

  QuestionDraft<T> atLast() {
    asking = asking.atLast();
    return this;
  }

  QuestionDraft<T> where(Predicate<Map<JobField, String>> matters) {
    asking = asking.where(matters);
    return this;
  }

  /** Asked, and not left open, where something holds. */
  QuestionDraft<T> neededWhere(Predicate<Map<JobField, String>> matters) {
    asking = asking.where(matters).neededWhere(matters);
    return this;
  }

  QuestionDraft<T> usually(String answer) {
    return usually(answer, answer);
  }

  QuestionDraft<T> usually(String answer, String said) {
    whenOpen = whenOpen.taking(answer, said);
    return this;
  }

  /** Help says what is taken where no fixed answer can. */
  QuestionDraft<T> openSays(String said) {
    whenOpen = whenOpen.saying(said);
    return this;
  }

  /**
   * What is taken for granted where it is left open.
   *
   * @param sentence with {} for the usual answer
   */
  QuestionDraft<T> assuming(String sentence) {
    return assuming(sentence, answers -> true);
  }

  QuestionDraft<T> assuming(String sentence, Predicate<Map<JobField, String>> applies) {
    whenOpen = whenOpen.assuming(sentence, applies);
    return this;
  }
}
