package hosewright.store.backup;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), in hexadecimal digits. */
final class Digests {
  private Digests() {}

  static MessageDigest begin() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has it", e);
    }
  }

  static String of(String text) {
    return written(begin().digest(text.getBytes(StandardCharsets.UTF_8)));
  }

  static String written(byte[] digest) {
    return HexFormat.of().formatHex(digest);
  }
}
