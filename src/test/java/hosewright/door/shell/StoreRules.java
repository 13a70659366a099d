package hosewright.door.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The rules that the store holds its rows to. */
final class StoreRules {
  private static final Pattern CONSTRAINT = Pattern.compile("CONSTRAINT (\\w+)");

  private StoreRules() {}

  /** The names of every rule that a migration gave the store. */
  static List<String> names() throws IOException {
    List<String> names = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("sql"))) {
      for (Path file : files.toList()) {
        Matcher named = CONSTRAINT.matcher(Files.readString(file));
        while (named.find()) {
          names.add(named.group(1));
        }
      }
    }
    assertThat(names).contains("CK_STOCK_ON_HAND", "CK_QUOTE_PERIOD", "CK_CUSTOMER_EXEMPTION");
    return names;
  }
}
