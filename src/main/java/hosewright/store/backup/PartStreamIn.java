package hosewright.store.backup;

import hosewright.store.seal.Seal;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.util.HexFormat;

/** One part while it is read, counted and digested, within what may be unfolded of all parts. */
final class PartStreamIn extends FilterInputStream {
  private final MessageDigest digest = Seal.sha256();
  private final long most;
  private long bytes;

  /** More would be unfolded than may be. */
  static final class TooMuch extends IOException {
    private static final long serialVersionUID = 1L;
  }

  /**
   * @param most bytes that this part may have
   */
  PartStreamIn(InputStream zip, long most) {
    super(zip);
    this.most = most;
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
  }

  @Override
  public int read(byte[] buffer, int from, int length) throws IOException {
    int read = super.read(buffer, from, length);
    if (read > 0) {
      bytes += read;
      if (bytes > most) {
        throw new TooMuch();
      }
      digest.update(buffer, from, read);
    }
    return read;
  }

  long bytes() {
    return bytes;
  }

  /** What the manifest should say of it, once all of it was read. */
  Part part(String name, long rows) {
    return new Part(name, rows, bytes, HexFormat.of().formatHex(digest.digest()));
  }

  /** The zip goes on. */
  @Override
  public void close() {}
}
