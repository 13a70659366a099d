package hosewright.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** Which Hosewright this is, as the build wrote it down. */
public final class ProgramVersion {
  private ProgramVersion() {}

  /** Such as {@code 1.4.0}. */
  public static String written() {
    Properties properties = new Properties();
    try (InputStream in = ProgramVersion.class.getResourceAsStream("version.properties")) {
      properties.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return properties.getProperty("version");
  }
}
