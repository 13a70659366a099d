package hosewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the built jar brings along, by the bill of materials in it. */
final class ShippedLicencesIT {
  private static final String BILL = "META-INF/sbom/application.cdx.json";

  /** Identifiers of SPDX, permissive or weak copyleft; of several licences one must be here. */
  private static final Set<String> WELCOME =
      Set.of(
          "Apache-2.0",
          "BSD-2-Clause",
          "BSD-3-Clause",
          "BSD-4-Clause",
          "BSD licence",
          "MIT",
          "MIT-0",
          "ISC",
          "0BSD",
          "CC0-1.0",
          "EPL-1.0",
          "EPL-2.0",
          "MPL-2.0",
          "LGPL-2.1-only",
          "LGPL-2.1-or-later",
          "LGPL-3.0-only",
          "LGPL-3.0-or-later");

  @Test
  void everything_shipped_may_be_shipped() throws IOException {
    Map<String, Set<String>> licences = licences();

    assertThat(licences).isNotEmpty();
    licences.forEach(
        (component, names) ->
            assertThat(names).as(component).anySatisfy(name -> assertThat(WELCOME).contains(name)));
  }

  @Test
  void every_library_in_the_jar_stands_in_the_bill() throws IOException {
    // Starters are empty jars that only name others, and are left out of ours.
    Set<String> billed =
        licences().keySet().stream()
            .filter(name -> !name.startsWith("spring-boot-starter-"))
            .collect(Collectors.toSet());
    try (ZipFile jar = new ZipFile("target/hosewright.jar")) {
      List<String> libraries =
          jar.stream()
              .map(entry -> entry.getName())
              .filter(name -> name.startsWith("BOOT-INF/lib/") && name.endsWith(".jar"))
              .map(name -> name.substring("BOOT-INF/lib/".length(), name.length() - 4))
              // Added by the repackaging itself, under the licence of Spring Boot.
              .filter(name -> !name.startsWith("spring-boot-jarmode-tools"))
              .toList();

      assertThat(billed)
          .as("write it anew with: mvn -B -Pbill generate-resources")
          .containsExactlyInAnyOrderElementsOf(libraries);
    }
  }

  @Test
  void the_list_of_licences_names_every_component() throws IOException {
    String list = Files.readString(Path.of("src/docs/licences.md"));

    licences()
        .forEach(
            (component, names) ->
                assertThat(list)
                    .contains("| " + component.replaceAll("-\\d[\\w.]*$", "") + " | ")
                    .satisfies(text -> names.forEach(name -> assertThat(text).contains(name))));
  }

  /** File name without its ending, and what the component may be taken under. */
  private static Map<String, Set<String>> licences() throws IOException {
    Map<String, Set<String>> found = new TreeMap<>();
    for (JsonNode component : bill().get("components")) {
      String name = component.get("name").asString() + "-" + component.get("version").asString();
      found.put(
          name,
          StreamSupport.stream(component.path("licenses").spliterator(), false)
              .map(ShippedLicencesIT::name)
              .collect(Collectors.toCollection(TreeSet::new)));
    }
    return found;
  }

  private static String name(JsonNode choice) {
    if (choice.has("expression")) {
      return choice.get("expression").asString();
    }
    JsonNode licence = choice.get("license");
    return licence.has("id") ? licence.get("id").asString() : licence.get("name").asString();
  }

  private static JsonNode bill() throws IOException {
    try (ZipFile jar = new ZipFile("target/hosewright.jar")) {
      String place = jar.getEntry(BILL) == null ? "BOOT-INF/classes/" + BILL : BILL;
      try (InputStream in = jar.getInputStream(jar.getEntry(place))) {
        return JsonMapper.shared().readTree(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      }
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }
}
