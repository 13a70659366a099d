package hosewright.paper.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** LibreOffice, run without a window on a profile of its own, recalculating what it loads. */
public final class Spreadsheet {
  private static final String ALWAYS_RECALCULATE =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <oor:items xmlns:oor="http://openoffice.org/2001/registry"
          xmlns:xs="http://www.w3.org/2001/XMLSchema"
          xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
        <item oor:path="/org.openoffice.Office.Calc/Formula/Load">
          <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop>
        </item>
      </oor:items>
      """;

  private final Path folder;

  private Spreadsheet(Path folder) {
    this.folder = folder;
  }

  /** Skips the calling test, saying why, where LibreOffice is not installed. */
  public static Spreadsheet in(Path folder) throws IOException {
    boolean installed =
        List.of(System.getenv("PATH").split(File.pathSeparator)).stream()
            .anyMatch(place -> Files.isExecutable(Path.of(place, "soffice")));
    assumeTrue(installed, "LibreOffice (soffice) is not installed: recalculation is not checked");
    Path user = Files.createDirectories(folder.resolve("profile").resolve("user"));
    Files.writeString(user.resolve("registrymodifications.xcu"), ALWAYS_RECALCULATE);
    return new Spreadsheet(folder);
  }

  /** Loads, recalculates and saves each file as .xlsx; gives the new files in the same order. */
  public List<Path> recalculated(List<Path> files) throws IOException, InterruptedException {
    Path results = Files.createDirectories(folder.resolve("recalculated"));
    List<String> command = new ArrayList<>();
    command.add("soffice");
    command.add("-env:UserInstallation=" + folder.resolve("profile").toUri());
    command.addAll(List.of("--headless", "--norestore", "--convert-to", "xlsx", "--outdir"));
    command.add(results.toString());
    files.forEach(file -> command.add(file.toString()));
    Path log = folder.resolve("soffice.log");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
    try {
      assertThat(process.waitFor(6, TimeUnit.MINUTES)).as("LibreOffice ended").isTrue();
    } finally {
      process.destroyForcibly();
    }
    List<Path> made = files.stream().map(file -> results.resolve(file.getFileName())).toList();
    assertThat(made).as(Files.readString(log)).allMatch(Files::exists);
    return made;
  }
}
