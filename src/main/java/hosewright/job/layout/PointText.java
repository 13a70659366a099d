package hosewright.job.layout;

import java.util.Map;

/**
 * A place where legs meet, as it was written down.
 *
 * @param name what legs call it
 * @param words what is said of it, text by word
 */
public record PointText(String name, Map<String, String> words) {
  public PointText {
    words = Map.copyOf(words);
  }
}
