package hosewright.door.shell.order;

import hosewright.desk.Papers;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.option.PaperOptions;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import hosewright.paper.order.Slip;
import hosewright.paper.order.Slip.Part;
import hosewright.paper.order.SlipPdf;
import hosewright.paper.order.SlipWorkbook;
import hosewright.paper.page.Export;
import hosewright.paper.page.Paper;
import hosewright.problem.BadInputException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Shows a slip on the screen and writes it into files where that was asked for. */
final class SlipFiles {
  private static final List<String> KINDS = List.of("text", "workbook", "pdf");
  private static final Map<String, String> ENDINGS =
      Map.of("text", ".txt", "workbook", ".xlsx", "pdf", ".pdf");
  private static final Screen PAPER_WIDE = new Screen(100, false);

  private SlipFiles() {}

  static OptionSpec[] options() {
    return Stream.concat(
            Stream.of(
                OptionSpec.value("as", "KINDS", "write it too: " + String.join(", ", KINDS))
                    .completingList(() -> KINDS)),
            Arrays.stream(PaperOptions.options()))
        .toArray(OptionSpec[]::new);
  }

  /**
   * Writes the files asked for, all places claimed first.
   *
   * @return the files written; none when none were asked for
   */
  static List<String> write(Invocation in, Slip slip, String stem, String dealer) {
    if (in.value("as").isEmpty()) {
      return List.of();
    }
    Paper paper = PaperOptions.paper(in);
    Path folder = PaperOptions.folder(in);
    Map<String, Export> places = new LinkedHashMap<>();
    for (String typed : in.value("as").get().split(",", -1)) {
      String kind = Papers.kindCalled(typed);
      if (!KINDS.contains(kind)) {
        throw new BadInputException("as", typed, "one or more of " + String.join(", ", KINDS));
      }
      places.put(kind, Export.to(folder, stem + ENDINGS.get(kind), in.flag("overwrite")));
    }
    List<String> files = new ArrayList<>();
    places.forEach((kind, place) -> files.add(write(place, kind, slip, dealer, paper)));
    return files;
  }

  private static String write(Export place, String kind, Slip slip, String dealer, Paper paper) {
    try {
      return place
          .write(
              switch (kind) {
                case "workbook" -> out -> SlipWorkbook.write(slip, dealer, paper, out);
                case "pdf" -> out -> SlipPdf.write(slip, paper, out);
                default -> Export.text(text(slip, PAPER_WIDE) + "\n");
              })
          .toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(Slip slip, Screen screen) {
    Prose prose = new Prose(screen);
    prose.line(slip.title());
    slip.facts().forEach(prose::line);
    for (Part part : slip.parts()) {
      if (!part.columns().isEmpty()) {
        Table table =
            Table.of(part.columns().toArray(String[]::new))
                .numbers(part.figures().stream().mapToInt(Integer::intValue).toArray());
        part.rows().forEach(row -> table.row(row.toArray()));
        prose.block(part.heading() + "\n" + table.on(screen));
      } else {
        prose.block(part.heading());
      }
      part.remarks().forEach(remark -> prose.line("  ", remark));
    }
    return prose.toString();
  }
}
