package hosewright.json;

import hosewright.thread.End;
import hosewright.thread.Gender;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** An end as {@code 1.5 NPSH female swivel}. */
final class EndText {
  private static final String SWIVEL = "swivel";

  private EndText() {}

  static String write(End end) {
    List<String> words = new ArrayList<>();
    words.add(BigDecimal.valueOf(end.sizeIn()).stripTrailingZeros().toPlainString());
    words.add(end.family());
    if (!end.gender().word().isEmpty()) {
      words.add(end.gender().word());
    }
    if (end.swivel()) {
      words.add(SWIVEL);
    }
    return String.join(" ", words);
  }

  static End parse(String text) {
    List<String> words = new ArrayList<>(List.of(text.split(" ")));
    boolean swivel = words.remove(SWIVEL);
    double sizeIn = Double.parseDouble(words.remove(0));
    Gender gender =
        Stream.of(Gender.values())
            .filter(g -> g != Gender.SEXLESS && words.size() > 1)
            .filter(g -> words.get(words.size() - 1).equals(g.word()))
            .findFirst()
            .orElse(Gender.SEXLESS);
    if (gender != Gender.SEXLESS) {
      words.remove(words.size() - 1);
    }
    return new End(sizeIn, String.join(" ", words), gender, swivel);
  }
}
