package hosewright.paper.page;

import hosewright.disk.WholeFile;
import hosewright.problem.BadInputException;
import hosewright.problem.PlainText;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts a paper into a folder whole or not at all: it is written beside its place and moved there
 * when complete, and an existing file is replaced only when that was asked for.
 */
public final class Export {
  private static final String FIELD = "out";
  private static final int LONGEST_STEM = 100;
  private static final Pattern EXTENSION = Pattern.compile("\\.[A-Za-z0-9]{1,5}$");
  private static final Pattern UNSAFE = Pattern.compile("[^\\p{L}\\p{N}._-]+");

  /** Names that some systems keep for devices, whatever follows the dot. */
  private static final Pattern DEVICE =
      Pattern.compile("(?i)(con|prn|aux|nul|com\\d|lpt\\d)(\\..*)?");

  private final Path target;
  private final boolean overwrite;

  private Export(Path target, boolean overwrite) {
    this.target = target;
    this.overwrite = overwrite;
  }

  /** Writes a paper's bytes. */
  @FunctionalInterface
  public interface Body {
    void writeTo(OutputStream out) throws IOException;
  }

  /** A paper that is text: what may not be shown is spelt out in it. */
  public static Body text(String text) {
    return out -> out.write(PlainText.spelt(text).getBytes(StandardCharsets.UTF_8));
  }

  /**
   * A place for a paper.
   *
   * @param name file name; it is made safe by {@link #safeName}
   * @throws BadInputException field "out", when the folder is missing or cannot be written to, or
   *     the file exists and overwriting was not asked for, or is a link
   */
  public static Export to(Path folder, String name, boolean overwrite) {
    Path target = folder.resolve(safeName(name));
    if (!Files.isDirectory(folder) || !Files.isWritable(folder)) {
      throw notWritable(folder);
    }
    WholeFile.refuseLink(FIELD, target);
    if (Files.isDirectory(target)) {
      throw new BadInputException(FIELD, target.toString(), "name a file; that is a folder");
    }
    if (!overwrite && Files.exists(target)) {
      throw exists(target);
    }
    return new Export(target, overwrite);
  }

  /**
   * A file name that every common system takes: letters, digits, dot, underscore and hyphen, no
   * leading dot, no device name, at most 100 characters before the extension.
   */
  public static String safeName(String wanted) {
    Matcher dotted = EXTENSION.matcher(wanted);
    String extension = dotted.find() ? dotted.group() : "";
    String stem = wanted.substring(0, wanted.length() - extension.length());
    String safe = trimmed(UNSAFE.matcher(stem).replaceAll("-"));
    if (safe.length() > LONGEST_STEM) {
      safe = trimmed(safe.substring(0, LONGEST_STEM));
    }
    if (safe.isEmpty()) {
      safe = "quote";
    }
    if (DEVICE.matcher(safe).matches()) {
      safe = "_" + safe;
    }
    return safe + extension.toLowerCase(Locale.ROOT);
  }

  /** Writes the paper and gives the path it is at; a failure leaves the folder as it was. */
  public Path write(Body body) throws IOException {
    Path part = target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID());
    try {
      try (OutputStream out = new BufferedOutputStream(open(part))) {
        body.writeTo(out);
      }
      settle(part);
      return target;
    } finally {
      Files.deleteIfExists(part);
    }
  }

  private OutputStream open(Path part) {
    try {
      return Files.newOutputStream(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    } catch (IOException e) {
      throw notWritable(target.getParent());
    }
  }

  private void settle(Path part) throws IOException {
    if (overwrite) {
      Files.move(part, target, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
      return;
    }
    // A move cannot both be atomic and refuse to replace, so the name is claimed first.
    try {
      Files.createFile(target);
    } catch (FileAlreadyExistsException e) {
      throw exists(target);
    }
    try {
      Files.move(part, target, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException | RuntimeException e) {
      Files.deleteIfExists(target);
      throw e;
    }
  }

  private static String trimmed(String name) {
    return name.replaceAll("^[.\\-]+|[.\\-]+$", "");
  }

  private static BadInputException notWritable(Path folder) {
    return new BadInputException(
        FIELD, String.valueOf(folder), "give a folder that exists and can be written to");
  }

  private static BadInputException exists(Path target) {
    return new BadInputException(
        FIELD, target.toString(), "the file exists; give another name or ask to overwrite it");
  }
}
