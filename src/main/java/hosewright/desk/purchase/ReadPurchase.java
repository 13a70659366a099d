package hosewright.desk.purchase;

import hosewright.desk.NamedPath;
import hosewright.desk.Refusals;
import hosewright.desk.TextLines;
import hosewright.desk.purchase.AskedPurchase.AskedGroup;
import hosewright.intake.JobFile;
import hosewright.intake.PackageFile;
import hosewright.job.layout.LayoutText;
import hosewright.job.question.JobField;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what a purchase is asked for in: package file, job files, lists of parts, lines typed. */
public final class ReadPurchase {
  /** What a list of parts is called that has no title. */
  static final String PARTS = "Parts";

  private final Refusals refusals = new Refusals();
  private final List<AskedGroup> groups = new ArrayList<>();
  private final List<String> customers = new ArrayList<>();

  /**
   * What names it all.
   *
   * @param packageFile name of a package file
   * @param jobs names of job files
   * @param partsFile name of a text file of parts, one a line
   * @param parts lines typed
   * @param kits names of kits
   */
  public record Sources(
      Optional<String> packageFile,
      List<String> jobs,
      Optional<String> partsFile,
      List<String> parts,
      List<String> kits) {
    public Sources {
      jobs = List.copyOf(jobs);
      parts = List.copyOf(parts);
      kits = List.copyOf(kits);
    }

    /** A package file alone. */
    public static Sources ofPackage(String name) {
      return new Sources(Optional.of(name), List.of(), Optional.empty(), List.of(), List.of());
    }
  }

  /**
   * The purchase.
   *
   * @param title given beside; wins over the package's
   * @param customer given beside; wins over the package's
   * @throws hosewright.problem.BadInputException naming everything that cannot be used
   */
  public AskedPurchase read(Sources sources, Optional<String> title, Optional<String> customer) {
    Optional<PackageFile.Read> file =
        sources
            .packageFile()
            .flatMap(
                name ->
                    refusals.read(
                        () ->
                            PackageFile.read(
                                NamedPath.of("package", name, "the name of a package file"))));
    file.ifPresent(read -> read.entries().forEach(this::entry));
    for (String name : sources.jobs()) {
      refusals
          .read(() -> job(NamedPath.of("job", name, "the name of a job file")))
          .ifPresent(job -> groups.add(AskedGroup.of(job)));
    }
    sources
        .partsFile()
        .flatMap(name -> refusals.read(() -> TextLines.read("parts", name)))
        .ifPresent(lines -> groups.add(AskedGroup.of(PARTS, lines)));
    if (!sources.parts().isEmpty()) {
      groups.add(AskedGroup.of(PARTS, sources.parts()));
    }
    sources.kits().forEach(name -> groups.add(AskedGroup.ofKit(name)));
    refusals.throwAny();
    return new AskedPurchase(
        title.or(() -> file.flatMap(PackageFile.Read::title)),
        customer
            .or(() -> file.flatMap(PackageFile.Read::customer))
            .or(() -> customers.stream().findFirst()),
        groups);
  }

  private void entry(PackageFile.Entry entry) {
    Optional<AskedGroup> job =
        entry.job().flatMap(path -> refusals.read(() -> AskedGroup.of(job(path))));
    AskedGroup parts = AskedGroup.of("", entry.parts()).with(entry.kits());
    groups.add(
        job.map(one -> one.and(parts))
            .orElse(parts)
            .as(entry.title(), entry.count(), entry.optional()));
  }

  private LayoutText job(Path file) {
    LayoutText job = JobFile.read(file).layout();
    if (job.isPartsAlone()) {
      Optional.ofNullable(job.answers().get(JobField.CUSTOMER)).ifPresent(customers::add);
    }
    return job;
  }
}
