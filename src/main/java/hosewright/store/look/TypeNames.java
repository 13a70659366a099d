package hosewright.store.look;

import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.Set;
import org.h2.engine.Database;
import org.h2.mvstore.DataUtils;
import org.h2.mvstore.WriteBuffer;
import org.h2.mvstore.type.BasicDataType;
import org.h2.mvstore.type.MetaType;

/**
 * Reads which classes a file names as its data types. H2 makes one of each, so a class that is none
 * of its own is not so much as loaded here.
 */
final class TypeNames extends BasicDataType<String> {
  /** Holds the type of what it wraps. */
  private static final String WRAPPER = "org.h2.mvstore.tx.VersionedValueType$Factory";

  private static final Set<String> KNOWN =
      Set.of(
          "org.h2.mvstore.db.LobStorageMap$BlobMeta$Type",
          "org.h2.mvstore.db.LobStorageMap$BlobReference$Type",
          "org.h2.mvstore.db.NullValueDataType",
          "org.h2.mvstore.db.RowDataType$Factory",
          "org.h2.mvstore.db.ValueDataType$Factory",
          "org.h2.mvstore.type.ByteArrayDataType",
          "org.h2.mvstore.type.LongDataType",
          "org.h2.mvstore.type.StringDataType");

  private static final int LONGEST = 127;

  private final MetaType<Database> known = new MetaType<>(null, null);
  private String foreign;

  /** The first one that is not known; nothing after it can be read. */
  Optional<String> foreign() {
    return Optional.ofNullable(foreign);
  }

  @Override
  public String read(ByteBuffer page) {
    String name = name(page);
    int from = page.position() - name.length() - 1;
    if (name.equals(WRAPPER)) {
      from = page.position();
      name = name(page);
    }
    if (!KNOWN.contains(name)) {
      foreign = name;
      throw new IllegalStateException("a data type that is not known");
    }
    // Passes over what the type says of itself.
    page.position(from);
    known.read(page);
    return name;
  }

  /** Those that are known are ASCII and so short that one byte says how long. */
  private String name(ByteBuffer page) {
    int length = DataUtils.readVarInt(page);
    if (length < 0 || length > LONGEST) {
      foreign = "with a name of %d characters".formatted(length);
      throw new IllegalStateException("a name too long");
    }
    return DataUtils.readString(page, length);
  }

  @Override
  public int compare(String one, String other) {
    return one.compareTo(other);
  }

  @Override
  public int getMemory(String name) {
    return 2 * name.length();
  }

  @Override
  public void write(WriteBuffer page, String name) {
    throw new UnsupportedOperationException("a file is only looked at");
  }

  @Override
  public String[] createStorage(int size) {
    return new String[size];
  }
}
