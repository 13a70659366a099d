package hosewright.paper.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.line.model.LinePlan;
import hosewright.paper.quote.SampleQuotes;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

final class LineDrawingTest {
  private static final LinePlan HYDRANT = SampleQuotes.hydrantLine().plan();

  @Test
  void the_drawing_is_well_formed_and_names_every_part_in_order() throws Exception {
    Document svg =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(LineDrawing.svg(HYDRANT))));

    NodeList texts = svg.getElementsByTagName("text");
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < texts.getLength(); i++) {
      all.append(texts.item(i).getTextContent()).append('|');
    }
    assertThat(all).containsSubsequence("Hydrant outlet", "Adapter", "9 × Hose", "Fog nozzle");
    assertThat(all).contains("8 joints G, no. 3|");
    // Joints between parts: a disc each, numbered as the joints sheet numbers them.
    assertThat(svg.getElementsByTagName("circle").getLength()).isEqualTo(3);
  }

  @Test
  void a_joint_that_does_not_mate_is_marked() {
    LinePlan plan = SampleQuotes.withFirstJointJammed(HYDRANT);

    assertThat(LineDrawing.svg(plan)).contains(">X</text>");
    assertThat(LineDrawing.text(plan, 80)).contains(" (X)  joint 1: JAMS");
  }

  @Test
  void hose_is_drawn_as_hose_whatever_its_description_says() {
    LinePlan renamed = SampleQuotes.withHoseDescribed(HYDRANT, "Attack jacketed");

    assertThat(LineDrawing.text(renamed, 80)).contains("[===] 9 x Attack jacketed");
  }

  @Test
  void the_terminal_drawing_keeps_its_width_and_its_order() {
    for (int width : List.of(20, 40, 72, 120)) {
      String drawing = LineDrawing.text(HYDRANT, width);
      assertThat(drawing.lines()).allMatch(line -> line.length() <= width);
    }
    assertThat(LineDrawing.text(HYDRANT, 80))
        .containsSubsequence(
            "Hydrant outlet",
            "2.5 NH male",
            "(G)  joint 1",
            "2.5 NH female swivel",
            "9 x Hose",
            "8 between them, joint 3: gasket",
            "(G)  joint 4",
            "Fog nozzle");
  }

  @Test
  void the_picture_is_grey_only_and_has_ink_in_every_third() throws IOException {
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(LineDrawing.png(HYDRANT)));

    assertThat(image.getColorModel().getNumColorComponents()).isEqualTo(1);
    int third = image.getWidth() / 3;
    for (int part = 0; part < 3; part++) {
      assertThat(darkPixels(image.getSubimage(part * third, 0, third, image.getHeight())))
          .isGreaterThan(1000);
    }
  }

  @Test
  void the_same_plan_draws_the_same_bytes() {
    assertThat(LineDrawing.png(HYDRANT)).isEqualTo(LineDrawing.png(HYDRANT));
    assertThat(LineDrawing.svg(HYDRANT)).isEqualTo(LineDrawing.svg(HYDRANT));
  }

  private static int darkPixels(BufferedImage image) {
    int dark = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        dark += (image.getRGB(x, y) & 0xFF) < 64 ? 1 : 0;
      }
    }
    return dark;
  }
}
