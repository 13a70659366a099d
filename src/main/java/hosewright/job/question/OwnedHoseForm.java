package hosewright.job.question;

import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a list of sections that the buyer has: {@code 4 x 50 ft 2.5 NH tested 250 psi, 2 x 25 ft}.
 *
 * <p>Each entry says how many, how long and with which couplings; the hose size where it is not the
 * couplings'; and, where known, the service test pressure and the marks. An entry without couplings
 * has those of the one before.
 */
final class OwnedHoseForm {
  private static final String FORM =
      "sections such as '4 x 50 ft 2.5 NH', with '1.75 in' before the couplings where the hose is"
          + " of another size, and 'tested 250 psi', 'marked fire' or 'marked drinking' where"
          + " known";

  /** No more than this of one length is a slip of the finger. */
  private static final int MOST_ALIKE = 1_000;

  private static final Pattern ENTRY =
      Pattern.compile("(\\d{1,9})\\s*(?:x|×|of)\\s*([\\d.]+\\s*(?:ft|feet|foot|m|'))\\s*(.*)");
  private static final Pattern SIZE =
      Pattern.compile("^([\\d./½¼¾-]+(?:\\s\\d/\\d)?\\s*(?:in|\"))\\s+");
  private static final Pattern TESTED =
      Pattern.compile("\\btested(?:\\s+(?:at|to))?\\s+([\\d.]+\\s*[a-z]+)");
  private static final Pattern MARKED = Pattern.compile("\\bmarked\\s+(fire|drinking)\\b");

  private final String field;

  OwnedHoseForm(String field) {
    this.field = field;
  }

  List<OwnedHose> read(String text) {
    List<OwnedHose> owned = new ArrayList<>();
    for (String entry : text.split("[,;]")) {
      if (!entry.isBlank()) {
        Optional<OwnedHose> last =
            owned.isEmpty() ? Optional.empty() : Optional.of(owned.get(owned.size() - 1));
        owned.add(entry(entry.strip(), last));
      }
    }
    return owned;
  }

  private OwnedHose entry(String entry, Optional<OwnedHose> last) {
    Matcher matcher = ENTRY.matcher(entry);
    if (!matcher.matches()) {
      throw refused(entry);
    }
    int count = Integer.parseInt(matcher.group(1));
    if (count < 1 || count > MOST_ALIKE) {
      throw AnswerReading.refusal(field, entry, "1 to " + MOST_ALIKE + " sections of a length", "");
    }
    double lengthFt = Measures.lengthFt(field, matcher.group(2));
    String rest = matcher.group(3);
    OptionalDouble testPsi = OptionalDouble.empty();
    Matcher tested = TESTED.matcher(rest.toLowerCase(Locale.ROOT));
    if (tested.find()) {
      testPsi = OptionalDouble.of(Measures.pressurePsi(field, tested.group(1)));
      rest = cut(rest, tested);
    }
    boolean fire = false;
    boolean drinking = false;
    Matcher marked = MARKED.matcher(rest.toLowerCase(Locale.ROOT));
    while (marked.find()) {
      fire |= marked.group(1).equals("fire");
      drinking |= marked.group(1).equals("drinking");
      rest = cut(rest, marked);
      marked = MARKED.matcher(rest.toLowerCase(Locale.ROOT));
    }
    rest = rest.strip();
    if (rest.isEmpty()) {
      OwnedHose like = last.orElseThrow(() -> refused(entry));
      return new OwnedHose(
          count,
          lengthFt,
          like.sizeIn(),
          like.inlet(),
          like.outlet(),
          testPsi,
          new OwnedHose.Marks(fire, drinking));
    }
    OptionalDouble sizeIn = OptionalDouble.empty();
    Matcher size = SIZE.matcher(rest);
    if (size.find()) {
      sizeIn = OptionalDouble.of(Measures.sizeIn(field, size.group(1)));
      rest = rest.substring(size.end());
    }
    End inlet = inlet(entry, rest.replaceFirst("^hose\\s+", ""));
    return new OwnedHose(
        count,
        lengthFt,
        sizeIn.orElse(inlet.sizeIn()),
        inlet,
        inlet.opposite(),
        testPsi,
        new OwnedHose.Marks(fire, drinking));
  }

  private static String cut(String text, Matcher found) {
    return (text.substring(0, found.start()) + " " + text.substring(found.end())).strip();
  }

  /** The receiving half of the couplings named: a swivel, as the female of hose is. */
  private End inlet(String entry, String couplings) {
    for (String half : List.of(" female swivel", " socket", "")) {
      try {
        End end = End.parse(couplings + half);
        if (end.carriesGasket() && end.listed()) {
          return end;
        }
      } catch (BadInputException e) {
        // another half may be the one this family has
      }
    }
    throw refused(entry);
  }

  private BadInputException refused(String entry) {
    return AnswerReading.refusal(field, entry, FORM, JobField.OWNED.example());
  }
}
