package hosewright.line.assembly;

import java.util.List;

/**
 * How many sections of each length make one line, in the order of the hose line's options.
 *
 * @param counts sections of each option
 * @param lengthFt coupled length of all of them, ft
 */
public record Lay(List<Integer> counts, double lengthFt) {

  public int sections() {
    return counts.stream().mapToInt(Integer::intValue).sum();
  }
}
