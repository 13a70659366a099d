package hosewright.thread;

import hosewright.csv.PlainNumber;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Decides which end a text means, or says why it means none or more than one. */
final class EndReader {
  /** Programs mostly hand back what was written by one: this spares them the reading. */
  private static final Map<String, End> CANONICAL =
      Families.ends().stream().collect(Collectors.toMap(End::toString, end -> end));

  private static final String SHAPE =
      "write size, family and half, for example '2.5 NH male' or '1.5 NPSH female swivel'";

  private final String text;
  private final EndWords words;
  private final List<Problem> problems = new ArrayList<>();

  private EndReader(String text) {
    this.text = text;
    this.words = EndWords.of(text);
  }

  static End read(String text) {
    if (text == null || text.isBlank()) {
      throw new BadInputException("end", "", SHAPE);
    }
    End canonical = CANONICAL.get(text);
    return canonical == null ? new EndReader(text).end() : canonical;
  }

  private End end() {
    for (String word : words.unknown) {
      refuse("'" + word + "' is not understood: " + SHAPE, withNearestWord(word));
    }
    Optional<Family> family = family();
    if (family.isEmpty()) {
      throw new BadInputException(problems);
    }
    Family named = family.get();
    EndSize.Answer answer = EndSize.of(words, named);
    OptionalDouble size = answer.sizeIn();
    if (size.isEmpty()) {
      OptionalDouble suggested = answer.suggestedIn();
      refuse(
          answer.refusal(), suggested.isPresent() ? written(named, suggested.getAsDouble()) : "");
    }
    Optional<Gender> gender = gender(named, size);
    if (size.isEmpty() || gender.isEmpty() || !problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    boolean swivel = words.swivel && gender.get() == Gender.FEMALE;
    End end = new End(size.getAsDouble(), named.code(), gender.get(), swivel);
    End settled = withThreadsPerInch(end);
    checkSwivel(settled, named);
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return settled;
  }

  private Optional<Family> family() {
    if (words.families.size() == 1) {
      return Optional.of(words.families.iterator().next());
    }
    if (words.families.size() > 1) {
      refuse(
          "one end has one family, this names "
              + words.families.stream().map(Family::code).collect(Collectors.joining(" and ")),
          "");
    } else if (!words.ambiguous.isEmpty()) {
      AmbiguousName name = AmbiguousName.find(words.ambiguous.get(0)).orElseThrow();
      refuse(name.question() + ": write " + String.join(" or ", name.families()), "");
    } else if (words.unknown.isEmpty()) {
      refuse("name a family: " + codes(), "");
    }
    return Optional.empty();
  }

  private Optional<Gender> gender(Family family, OptionalDouble size) {
    if (family.kind() == FamilyKind.SEXLESS) {
      if (!words.genders.isEmpty() || words.swivel) {
        refuse(
            "both halves of a " + family.code() + " coupling are alike: leave out the half",
            size.isPresent() ? written(family, size.getAsDouble()) : "");
      }
      return Optional.of(Gender.SEXLESS);
    }
    if (words.genders.size() > 1) {
      refuse("an end is one half of a joint: " + halves(family), "");
      return Optional.empty();
    }
    Gender said = words.genders.isEmpty() ? implied() : words.genders.iterator().next();
    Gender half = family.kind() == FamilyKind.CAM ? camHalf(said) : said;
    if (half == null || !family.halves().genders().contains(half)) {
      refuse(
          (half == null ? "say which half: " : family.code() + " has no such half: ")
              + halves(family),
          size.isPresent() && !namesTwo(family, size) ? written(family, size.getAsDouble()) : "");
      if (size.isPresent() && namesTwo(family, size)) {
        withThreadsPerInch(new End(size.getAsDouble(), family.code(), Gender.MALE, false));
      }
      return Optional.empty();
    }
    return Optional.of(half);
  }

  private boolean namesTwo(Family family, OptionalDouble size) {
    return words.threadsPerInch.isEmpty()
        && ThreadTable.namesake(family.code(), size.orElseThrow()).isPresent();
  }

  /** Only females swivel, so the word alone is enough. */
  private Gender implied() {
    return words.swivel || words.fixed ? Gender.FEMALE : null;
  }

  private static Gender camHalf(Gender said) {
    if (said == Gender.MALE) {
      return Gender.PLUG;
    }
    return said == Gender.FEMALE ? Gender.SOCKET : said;
  }

  private void checkSwivel(End end, Family family) {
    if (words.swivel && words.fixed) {
      refuse("it cannot be both swivel and fixed", end.toString());
    } else if (words.swivel && (end.gender() != Gender.FEMALE || !family.threaded())) {
      refuse(
          "only a threaded female swivels",
          new End(end.sizeIn(), end.family(), end.gender(), false).toString());
    }
  }

  private End withThreadsPerInch(End end) {
    Optional<ThreadDimensions> namesake = ThreadTable.namesake(end.family(), end.sizeIn());
    OptionalDouble own =
        ThreadTable.find(end).map(ThreadDimensions::threadsPerInch).orElse(OptionalDouble.empty());
    if (words.threadsPerInch.isEmpty()) {
      namesake.ifPresent(other -> refuse(askWhich(end, inFamily(end, other.family())), ""));
      return end;
    }
    double given = words.threadsPerInch.get(0);
    if (own.isPresent() && own.getAsDouble() == given) {
      return end;
    }
    if (namesake.isPresent() && namesake.get().threadsPerInch().orElse(0) == given) {
      return inFamily(end, namesake.get().family());
    }
    refuse(
        own.isPresent()
            ? end + " has " + PlainNumber.of(own.getAsDouble()) + " threads per inch"
            : "no threads per inch are known for " + end + ": leave them out and measure it",
        end.toString());
    return end;
  }

  private static String askWhich(End end, End other) {
    return "this names two threads, so say which: '"
        + end
        + "' ("
        + Families.ofCode(end.family()).orElseThrow().name()
        + ") or '"
        + other
        + "' ("
        + Families.ofCode(other.family()).orElseThrow().name()
        + ", "
        + threadsPerInch(other)
        + " threads per inch)";
  }

  private static String threadsPerInch(End end) {
    return ThreadTable.find(end)
        .map(ThreadDimensions::threadsPerInch)
        .map(t -> PlainNumber.of(t.orElseThrow()))
        .orElseThrow();
  }

  private static End inFamily(End end, String family) {
    return new End(end.sizeIn(), family, end.gender(), end.swivel());
  }

  private static String halves(Family family) {
    String words =
        family.halves().genders().stream().map(Gender::word).collect(Collectors.joining(", "));
    return family.threaded() ? words + " or female swivel" : words.replace(", ", " or ");
  }

  private static String codes() {
    return Families.all().stream().map(Family::code).collect(Collectors.joining(", "));
  }

  /** The end of this family and size that comes closest to the half that was given. */
  private String written(Family family, double sizeIn) {
    Gender said = words.genders.size() == 1 ? words.genders.iterator().next() : null;
    Gender half =
        said != null && family.halves().genders().contains(said)
            ? said
            : family.halves().genders().get(0);
    boolean turns = words.swivel && half == Gender.FEMALE && family.threaded();
    return new End(sizeIn, family.code(), half, turns).toString();
  }

  private String withNearestWord(String unknown) {
    String better = Nearest.to(unknown, EndWords.vocabulary());
    if (better.isEmpty()) {
      return "";
    }
    String corrected =
        text.replaceFirst("(?i)" + Pattern.quote(unknown), " " + better.replace("$", "") + " ");
    if (!EndWords.of(corrected).unknown.isEmpty()) {
      return "";
    }
    try {
      return read(corrected).toString();
    } catch (BadInputException e) {
      return e.problems().get(0).nearest();
    }
  }

  private void refuse(String allowed, String nearest) {
    problems.add(new Problem("end", text, allowed, nearest));
  }
}
