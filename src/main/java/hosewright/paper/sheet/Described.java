package hosewright.paper.sheet;

import hosewright.problem.PlainText;
import java.time.Instant;
import java.util.Date;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * What a workbook says of itself beside its sheets.
 *
 * @param subject empty for none
 * @param creator empty for nobody named
 * @param made empty where it is not to say when
 */
public record Described(String title, String subject, String creator, Optional<Instant> made) {

  /** Writes it into the workbook's properties, which the library takes as they come. */
  public void in(XSSFWorkbook workbook) {
    POIXMLProperties properties = workbook.getProperties();
    POIXMLProperties.CoreProperties core = properties.getCoreProperties();
    core.setTitle(PlainText.spelt(title));
    if (!subject.isEmpty()) {
      core.setSubjectProperty(PlainText.spelt(subject));
    }
    if (!creator.isEmpty()) {
      core.setCreator(PlainText.spelt(creator));
      core.setLastModifiedByUser(PlainText.spelt(creator));
    }
    made.map(Date::from)
        .ifPresent(
            at -> {
              core.setCreated(Optional.of(at));
              core.setModified(Optional.of(at));
            });
    properties.getExtendedProperties().setApplication("Hosewright");
  }
}
