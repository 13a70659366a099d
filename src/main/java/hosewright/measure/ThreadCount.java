package hosewright.measure;

import hosewright.problem.BadInputException;
import hosewright.problem.Given;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Locale;

/** Reads threads per inch, which are counted and so carry no unit that could be mistaken. */
final class ThreadCount {
  private static final String ALLOWED =
      "give threads per inch such as 9 or 11-1/2, from 2 up to 30; a pitch in mm goes with "
          + Given.as("pitch");
  private static final List<String> LABELS = List.of("", "tpi", "threads per inch", "per inch");

  private ThreadCount() {}

  static double read(String field, String text) {
    String typed = text == null ? "" : text.strip();
    Numeral numeral = Numeral.read(typed);
    String label = numeral.unitText().toLowerCase(Locale.ROOT);
    if (numeral.number().isEmpty()) {
      throw refusal(field, typed, "");
    }
    double threads = numeral.number().getAsDouble();
    if (!(threads >= 2 && threads <= 30)) {
      throw refusal(field, typed, "");
    }
    if (!LABELS.contains(label)) {
      boolean slip = !Nearest.to(label, LABELS.subList(1, LABELS.size())).isEmpty();
      throw refusal(field, typed, slip ? numeral.numberText() : "");
    }
    return threads;
  }

  private static BadInputException refusal(String field, String text, String nearest) {
    return new BadInputException(List.of(new Problem(field, text, ALLOWED, nearest)));
  }
}
