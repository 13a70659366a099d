package hosewright.paper.order;

import java.util.List;
import java.util.Set;

/**
 * A working paper of the house: a title, a few facts and tables to work down. The same slip goes on
 * a screen, into a spreadsheet and onto PDF pages.
 *
 * @param facts lines under the title
 */
public record Slip(String title, List<String> facts, List<Part> parts) {

  public Slip {
    facts = List.copyOf(facts);
    parts = List.copyOf(parts);
  }

  /**
   * A table under a heading.
   *
   * @param figures columns that hold figures
   * @param widths column widths in digits
   * @param remarks sentences below the table
   */
  public record Part(
      String heading,
      List<String> columns,
      Set<Integer> figures,
      List<Integer> widths,
      List<List<String>> rows,
      List<String> remarks) {

    public Part {
      columns = List.copyOf(columns);
      figures = Set.copyOf(figures);
      widths = List.copyOf(widths);
      rows = rows.stream().map(List::copyOf).toList();
      remarks = List.copyOf(remarks);
    }

    /** Sentences without a table. */
    public static Part of(String heading, List<String> remarks) {
      return new Part(heading, List.of(), Set.of(), List.of(), List.of(), remarks);
    }
  }
}
