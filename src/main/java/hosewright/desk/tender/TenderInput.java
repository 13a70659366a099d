package hosewright.desk.tender;

import hosewright.csv.CsvFile;
import hosewright.problem.BadInputException;
import hosewright.tender.TenderFile;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A tender's file, read through once before any work is done on it.
 *
 * @param sha256 digest of its bytes, and of the packages it names
 * @param hasPackages whether a row names a package file
 */
record TenderInput(Path file, String sha256, TenderFile.Survey survey, boolean hasPackages) {

  /**
   * Reads the file through.
   *
   * @throws BadInputException when it is not there, its header is wrong or it is no CSV text
   */
  static TenderInput read(String named) {
    Path file = path(named);
    try (DigestInputStream bytes = new DigestInputStream(open(file), digest())) {
      // The survey reads to the last byte, and closes.
      PackageDigest packages = new PackageDigest(folder(file));
      TenderFile.Survey survey =
          TenderFile.survey(
              name(file), CsvFile.utf8(bytes), row -> row.packageFile().ifPresent(packages::add));
      MessageDigest digest = bytes.getMessageDigest();
      byte[] whole = packages.isEmpty() ? digest.digest() : packages.with(digest.digest());
      return new TenderInput(file, HexFormat.of().formatHex(whole), survey, !packages.isEmpty());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  TenderFile rows() throws IOException {
    Reader text = CsvFile.utf8(open(file));
    return TenderFile.rows(name(file), text, survey);
  }

  String name() {
    return name(file);
  }

  /** The file's name without its ending, for the papers made from it. */
  String stem() {
    return name().replaceFirst("\\.[A-Za-z0-9]{1,5}$", "");
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName());
  }

  /** Where files are looked for that its rows name. */
  Path folder() {
    return folder(file);
  }

  private static Path folder(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    return folder == null ? Path.of("") : folder;
  }

  private static Path path(String named) {
    try {
      Path file = Path.of(named);
      if (Files.isRegularFile(file) && Files.isReadable(file)) {
        return file;
      }
    } catch (InvalidPathException e) {
      // falls through to the one message for a file that cannot be read
    }
    throw new BadInputException("file", named, "a CSV file that can be read");
  }

  private static InputStream open(Path file) throws IOException {
    return new BufferedInputStream(Files.newInputStream(file));
  }

  static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
