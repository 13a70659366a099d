package hosewright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.problem.PlainText;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;

/** Holds a workbook to what an XML reader takes. */
final class WellFormed {
  private WellFormed() {}

  /** Every part of markup reads as XML, its properties too, and none of its text hides marks. */
  static void workbook(Path workbook) throws Exception {
    int parts = 0;
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(workbook))) {
      for (ZipEntry part = in.getNextEntry(); part != null; part = in.getNextEntry()) {
        byte[] bytes = in.readAllBytes();
        if (part.getName().matches(".*\\.(xml|rels)")) {
          Document read =
              DocumentBuilderFactory.newInstance()
                  .newDocumentBuilder()
                  .parse(new ByteArrayInputStream(bytes));
          String text = read.getDocumentElement().getTextContent();
          assertThat(PlainText.is(text))
              .as("%s: %s", part.getName(), PlainText.spelt(text))
              .isTrue();
          parts++;
        }
      }
    }
    assertThat(parts).as("parts of %s", workbook).isGreaterThan(5);
  }
}
