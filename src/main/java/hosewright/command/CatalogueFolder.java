package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CatalogueReader;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.quote.CustomerReader;
import hosewright.quote.Customers;
import hosewright.quote.DealerTerms;
import hosewright.quote.TermsReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A folder of catalogue files, read whole. */
record CatalogueFolder(Catalogue catalogue, Customers customers, DealerTerms terms) {
  private static final String DEMO = "/hosewright/demo/catalogue/";

  /** Opens one file by name. */
  private interface Opener {
    InputStream open(String file) throws IOException;
  }

  /**
   * The catalogue in a folder.
   *
   * @throws BadInputException naming every file that is missing and every cell that is wrong
   */
  static CatalogueFolder read(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new BadInputException(
          "folder", folder.toString(), "a folder with items.csv, prices.csv and so on");
    }
    List<Problem> missing = new ArrayList<>();
    for (List<String> files :
        List.of(CatalogueReader.FILES, CustomerReader.FILES, TermsReader.FILES)) {
      for (String file : files) {
        if (!Files.isReadable(folder.resolve(file))) {
          missing.add(
              Problem.of("folder", folder.toString(), "a folder that has a readable " + file));
        }
      }
    }
    if (!missing.isEmpty()) {
      throw new BadInputException(missing);
    }
    return read(file -> Files.newInputStream(folder.resolve(file)));
  }

  /** The invented demo catalogue that comes with the program. */
  static CatalogueFolder demo() {
    return read(
        file ->
            Objects.requireNonNull(
                CatalogueFolder.class.getResourceAsStream(DEMO + file), DEMO + file));
  }

  private static CatalogueFolder read(Opener opener) {
    Catalogue catalogue = CatalogueReader.read(readers(CatalogueReader.FILES, opener));
    return new CatalogueFolder(
        catalogue,
        CustomerReader.read(readers(CustomerReader.FILES, opener), catalogue),
        TermsReader.read(readers(TermsReader.FILES, opener), catalogue.currency()));
  }

  private static Map<String, Reader> readers(List<String> files, Opener opener) {
    Map<String, Reader> readers = new LinkedHashMap<>();
    for (String file : files) {
      try (InputStream in = opener.open(file)) {
        // Malformed text must be refused, never replaced, or prices could change unseen.
        readers.put(
            file,
            new InputStreamReader(
                new ByteArrayInputStream(in.readAllBytes()),
                StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return readers;
  }
}
