package hosewright.intake;

import hosewright.csv.CellRows;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.UnsupportedFileFormatException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;

/**
 * One sheet of a workbook (ECMA-376, .xlsx), read as a stream.
 *
 * <p>Of a formula the value last calculated is taken, which is what the dealer saw. A workbook is
 * not trusted: its parts may unfold to so much and no more, and declarations of entities are
 * refused by the parser.
 */
public final class XlsxRows implements CellRows {
  private static final long MOST_BYTES = 200L << 20;
  private static final long MOST_SHEET_BYTES = 2L << 30;

  /** A parser holds a tag whole, with however much is written in its attributes. */
  private static final long LONGEST_TAG_BYTES = 4L << 20;

  private final Path file;
  private final Optional<String> sheet;

  /**
   * @param sheet name of the sheet; the first when empty
   */
  public XlsxRows(Path file, Optional<String> sheet) {
    this.file = file;
    this.sheet = sheet;
  }

  @Override
  public String title() {
    return file.getFileName() + sheet.map(name -> " sheet " + name).orElse("");
  }

  @Override
  public void each(Taker taker) {
    opened(
        reader -> {
          XlsxCells cells = XlsxCells.of(reader);
          try (LimitedStream in =
              new LimitedStream(sheet(reader), MOST_SHEET_BYTES, LONGEST_TAG_BYTES)) {
            XMLReader parser = XMLHelper.newXMLReader();
            parser.setContentHandler(new XlsxSheetHandler(cells, taker, in::goOn));
            parser.parse(new InputSource(in));
          } catch (XlsxSheetHandler.EnoughException e) {
            // The taker wants no more rows.
          }
        });
  }

  /** The names of the sheets, in order. */
  static List<String> sheets(Path file) {
    List<String> names = new ArrayList<>();
    new XlsxRows(file, Optional.empty())
        .opened(
            reader -> {
              var sheets = reader.getSheetIterator();
              while (sheets.hasNext()) {
                sheets.next().close();
                names.add(sheets.getSheetName());
              }
            });
    return names;
  }

  private interface Reading {
    void read(XSSFReader reader)
        throws IOException, OpenXML4JException, SAXException, ParserConfigurationException;
  }

  private void opened(Reading reading) {
    try {
      if (Files.size(file) > MOST_BYTES) {
        throw refused("a workbook of at most " + (MOST_BYTES >> 20) + " MiB; else save it as CSV");
      }
      try (OPCPackage workbook = OPCPackage.open(file.toFile(), PackageAccess.READ)) {
        reading.read(new XSSFReader(workbook));
      }
    } catch (LimitedStream.TooMuchException e) {
      throw refused("a workbook whose parts unfold to a usual size; save it as CSV");
    } catch (UnsupportedFileFormatException
        | OpenXML4JException
        | OpenXML4JRuntimeException
        | SAXException e) {
      throw refused("a workbook saved as .xlsx without a password, or CSV");
    } catch (IOException e) {
      // The library's guard against parts that unfold to far more than they were says so in text.
      throw refused(
          String.valueOf(e.getMessage()).contains("Zip bomb")
              ? "a workbook whose parts unfold to a usual size; save it as CSV"
              : "a readable workbook saved as .xlsx");
    } catch (BadInputException | XlsxSheetHandler.TakerFailedException e) {
      throw e;
    } catch (RuntimeException e) {
      // What the library meets in a damaged part comes out of it as whatever it ran into there.
      throw refused("a readable workbook saved as .xlsx");
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException(e);
    }
  }

  private InputStream sheet(XSSFReader reader) throws IOException, OpenXML4JException {
    List<String> names = new ArrayList<>();
    var sheets = reader.getSheetIterator();
    while (sheets.hasNext()) {
      InputStream in = sheets.next();
      if (sheet.isEmpty() || sheets.getSheetName().equalsIgnoreCase(sheet.get())) {
        return in;
      }
      in.close();
      names.add(sheets.getSheetName());
    }
    String wanted = sheet.orElse("");
    throw new BadInputException(
        List.of(
            new Problem(
                file.getFileName() + " sheet",
                wanted,
                "its sheets are " + String.join(", ", names),
                Nearest.to(wanted, names))));
  }

  private BadInputException refused(String allowed) {
    return new BadInputException("file", file.toString(), allowed);
  }

  /** The bytes of a small part, whole. */
  static byte[] small(InputStream part, long most) {
    try (InputStream in = new LimitedStream(part, most)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
