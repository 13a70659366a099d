package hosewright.desk;

import hosewright.store.folder.DealersFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The dealer's terms of sale, a plain text file beside the books that anybody may edit. */
final class TermsOfSale {
  private TermsOfSale() {}

  /** One sentence each; none until somebody writes the file. */
  public static List<String> in(Path dataFolder) {
    Path file = dataFolder.resolve(DealersFiles.TERMS_OF_SALE);
    return Files.exists(file) ? TextLines.read("terms", file) : List.of();
  }
}
