package hosewright.store.database;

import java.nio.ByteBuffer;
import org.h2.mvstore.WriteBuffer;
import org.h2.mvstore.type.BasicDataType;

/** Notes that the embedded store was brought to make one. */
public final class CanaryType extends BasicDataType<String> {
  private static volatile boolean made;

  public CanaryType() {
    made = true;
  }

  static boolean wasMade() {
    return made;
  }

  static void forget() {
    made = false;
  }

  @Override
  public int getMemory(String text) {
    return 0;
  }

  @Override
  public void write(WriteBuffer page, String text) {}

  @Override
  public String read(ByteBuffer page) {
    return "";
  }

  @Override
  public String[] createStorage(int size) {
    return new String[size];
  }
}
