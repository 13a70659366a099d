package hosewright.fuzz;

import java.util.List;
import java.util.random.RandomGenerator;

/** Changes texts a little: cut, doubled, crossed with another, or with something awkward put in. */
final class Mutation {
  private static final List<String> AWKWARD =
      List.of(
          "",
          " ",
          "\t",
          "\n",
          "\r\n",
          "\0",
          "\u00a0",
          "\u200b",
          "\ufeff",
          "\u202e",
          "½",
          "1½",
          "1/0",
          "-1",
          "0",
          "-0",
          "1e308",
          "NaN",
          "Infinity",
          "99999999999999999999",
          "0x10",
          "٣",
          "１",
          "'",
          "\"",
          "\"\"",
          "\\",
          "{",
          "}",
          "[",
          "]",
          ":",
          ": ",
          "#",
          "&a",
          "*a",
          "!!",
          "|",
          ">",
          "%",
          "@",
          "`",
          ",",
          ";",
          "=",
          "--",
          "--json",
          "<<: *a",
          "!!java.net.URL [x]",
          "../..",
          "=1+1",
          "ÿ",
          "𝟛",
          "\ud83d",
          "e\u0301",
          "ß",
          "İ",
          "NH",
          "NPT",
          "male",
          "female",
          "swivel",
          "in",
          "2.5",
          "psi",
          "gpm",
          "ft",
          "m",
          "%s%n",
          "${x}",
          "$(x)",
          "null",
          "true",
          "~",
          "---",
          "...");

  private final RandomGenerator random;

  Mutation(RandomGenerator random) {
    this.random = random;
  }

  /** One to four changes to a text. */
  String of(String text, List<String> others) {
    String changed = text;
    int changes = 1 + random.nextInt(4);
    for (int i = 0; i < changes; i++) {
      changed = once(changed, others);
    }
    return changed;
  }

  String awkward() {
    return AWKWARD.get(random.nextInt(AWKWARD.size()));
  }

  private String once(String text, List<String> others) {
    int from = random.nextInt(text.length() + 1);
    int to = from + random.nextInt(Math.min(12, text.length() - from) + 1);
    return switch (random.nextInt(7)) {
      case 0 -> text.substring(0, from) + awkward() + text.substring(from);
      case 1 -> text.substring(0, from) + text.substring(to);
      case 2 -> text.substring(0, to) + text.substring(from);
      case 3 -> text.substring(0, from) + awkward() + text.substring(to);
      case 4 -> text.substring(0, from) + (char) random.nextInt(0x250) + text.substring(to);
      case 5 -> crossed(text.substring(0, from), others.get(random.nextInt(others.size())));
      default ->
          text.substring(0, from)
              + text.substring(from, to).repeat(random.nextInt(40))
              + text.substring(to);
    };
  }

  private String crossed(String start, String other) {
    return start + other.substring(random.nextInt(other.length() + 1));
  }
}
