package hosewright.desk.interview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An answer that is offered by a letter.
 *
 * @param answer what picking it says
 * @param shown what a person reads beside the letter
 */
record Choice(String answer, String shown) {

  static Choice of(String answer) {
    return new Choice(answer, answer);
  }

  static String letter(int place) {
    return String.valueOf((char) ('a' + place));
  }

  /** Letters stand for choices; several may be given with commas. Empty where it is no letters. */
  static Optional<String> picked(String text, List<Choice> offered) {
    List<String> said = new ArrayList<>();
    for (String part : text.split(",", -1)) {
      String letter = part.strip();
      int place = letter.length() == 1 ? Character.toLowerCase(letter.charAt(0)) - 'a' : -1;
      if (place < 0 || place >= offered.size()) {
        return Optional.empty();
      }
      said.add(offered.get(place).answer());
    }
    return Optional.of(String.join(", ", said));
  }
}
