package hosewright.job.question;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What the line is for, which decides the marks its parts must carry and the hose it takes. */
public enum Use {
  WATER,
  /** Attack hose for a hand line, supply hose before it. */
  FIRE,
  DRINKING,
  ATTACK,
  SUPPLY,
  WILDLAND,
  STANDPIPE,
  WASH_DOWN;

  static Use of(String word) {
    return valueOf(word.replace('-', '_').toUpperCase(Locale.ROOT));
  }

  /** The word that is answered: {@code wash-down}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static List<String> words() {
    return Arrays.stream(values()).map(Use::word).toList();
  }

  /** Whether the fire service uses it so. */
  public boolean isFire() {
    return switch (this) {
      case FIRE, ATTACK, SUPPLY, WILDLAND, STANDPIPE -> true;
      case WATER, DRINKING, WASH_DOWN -> false;
    };
  }
}
