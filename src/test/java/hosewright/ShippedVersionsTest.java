package hosewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.lang.module.ModuleDescriptor.Version;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * No library in the bill of materials is older than the version that mended a published fault.
 *
 * <p>The list is what could be read without asking a service; it names what was looked up and what
 * was known by heart, and is as complete as its last reader made it.
 */
final class ShippedVersionsTest {
  private static final Path BILL = Path.of("src/main/resources/META-INF/sbom/application.cdx.json");
  private static final Path ADVISORIES = Path.of("src/test/resources/hosewright/advisories.csv");

  @Test
  void every_library_named_in_an_advisory_is_shipped_as_mended_or_later() throws IOException {
    Map<String, Version> shipped = shipped();
    for (CSVRecord advisory : advisories()) {
      String library = advisory.get("group") + ":" + advisory.get("component");
      assertThat(shipped).as("%s is shipped, or its row goes", library).containsKey(library);
      assertThat(shipped.get(library))
          .as("%s, %s", library, advisory.get("advisory"))
          .isGreaterThanOrEqualTo(Version.parse(advisory.get("mended_in")));
    }
  }

  private static Map<String, Version> shipped() {
    Map<String, Version> versions = new HashMap<>();
    for (JsonNode part : new JsonMapper().readTree(BILL.toFile()).get("components")) {
      versions.put(
          part.get("group").asString() + ":" + part.get("name").asString(),
          Version.parse(part.get("version").asString()));
    }
    return versions;
  }

  private static List<CSVRecord> advisories() throws IOException {
    try (Reader in = Files.newBufferedReader(ADVISORIES, StandardCharsets.UTF_8)) {
      return CSVFormat.DEFAULT
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(in)
          .getRecords();
    }
  }
}
