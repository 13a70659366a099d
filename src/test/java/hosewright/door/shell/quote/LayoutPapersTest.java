package hosewright.door.shell.quote;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.DemoBooks;
import hosewright.door.shell.run.CommandTrial;
import hosewright.paper.sheet.WorkbookReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The workbook of unlike lines that part. */
final class LayoutPapersTest {
  @TempDir private Path data;
  @TempDir private Path out;

  @Test
  void pressures_of_every_leg_are_those_of_the_plan_and_no_formula_of_one_line_stands_there()
      throws IOException {
    CommandTrial desk =
        CommandTrial.of(data, trial -> List.of(new QuoteMakeCommand(DemoBooks.of(trial))));
    JsonNode made =
        desk.run(
                "quote",
                "make",
                "--job",
                "quotes/layouts/unlike-hand-lines.yaml",
                "--export",
                "workbook",
                "--out",
                out.toString(),
                "--json")
            .json();

    try (XSSFWorkbook workbook = WorkbookReader.open(out.resolve("Q-000001-r1.xlsx"))) {
      List<Double> inlets = new ArrayList<>();
      List<Double> outlets = new ArrayList<>();
      for (Row row : workbook.getSheet("Hydraulics")) {
        if (row.getCell(0) != null && row.getCell(0).toString().startsWith("Pressure along")) {
          break;
        }
        if (row.getCell(7) != null && row.getCell(7).getCellType().name().equals("NUMERIC")) {
          inlets.add(row.getCell(6).getNumericCellValue());
          outlets.add(row.getCell(7).getNumericCellValue());
        }
      }
      assertThat(inlets).isEqualTo(ofLegs(made, "inletPsi"));
      assertThat(outlets).isEqualTo(ofLegs(made, "outletPsi"));
      assertThat(workbook.getName("need_psi")).isNull();
      // A table and a chart for each way to an appliance.
      assertThat(workbook.getName("profile_chart_way_2")).isNotNull();
      assertThat(workbook.getName("profile_chart_way_3")).isNull();
      assertThat(workbook.getSheet("Hydraulics").getDrawingPatriarch().getCharts()).hasSize(2);
    }
  }

  private static List<Double> ofLegs(JsonNode quote, String figure) {
    List<Double> figures = new ArrayList<>();
    quote.path("plan").path("legs").forEach(leg -> figures.add(leg.path(figure).asDouble()));
    assertThat(figures).hasSize(3);
    return figures;
  }
}
