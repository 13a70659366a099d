package hosewright.desk.purchase;

import hosewright.job.layout.LayoutText;
import hosewright.job.question.JobField;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A purchase as it is asked for.
 *
 * @param title of the whole; without it that of its first group
 * @param customer who buys; without it whom the jobs name
 * @param groups what is bought, purpose by purpose
 */
public record AskedPurchase(
    Optional<String> title, Optional<String> customer, List<AskedGroup> groups) {
  public AskedPurchase {
    groups = List.copyOf(groups);
  }

  /** Whether it says who buys, or one of its jobs does. */
  public boolean namesBuyer() {
    return customer.isPresent()
        || groups.stream()
            .flatMap(group -> group.job().stream())
            .anyMatch(job -> job.answers().containsKey(JobField.CUSTOMER));
  }

  /** The same for a buyer. */
  public AskedPurchase soldTo(String buyer) {
    return new AskedPurchase(title, Optional.of(buyer), groups);
  }

  /** What a job file asks for that names parts and no line. */
  public static AskedPurchase ofParts(LayoutText file) {
    return new AskedPurchase(
        Optional.empty(),
        Optional.ofNullable(file.answers().get(JobField.CUSTOMER)),
        List.of(AskedGroup.of(file)));
  }

  /**
   * A job, or a list of parts.
   *
   * @param title empty for the title of the job
   * @param count how often the whole of it is bought
   * @param optional whether it is offered beside the total
   * @param job as its file has it; empty for parts alone
   * @param parts as a seller writes them: {@code 4 x nozzle 1.5 NH 150 gpm 100 psi}; of a job those
   *     wanted besides what its file says
   * @param kits names of kits whose parts go into it
   */
  public record AskedGroup(
      String title,
      int count,
      boolean optional,
      Optional<LayoutText> job,
      List<String> parts,
      List<String> kits) {
    public AskedGroup {
      parts = List.copyOf(parts);
      kits = List.copyOf(kits);
    }

    /** One job of one line, bought once. */
    public static AskedGroup of(Map<JobField, String> job) {
      return of(LayoutText.oneLine(job));
    }

    /** What a job file asks for, bought once: a line, parts beside it, or parts alone. */
    public static AskedGroup of(LayoutText job) {
      if (job.isPartsAlone()) {
        return of(job.answers().getOrDefault(JobField.TITLE, ""), job.beside().parts())
            .with(job.beside().kits());
      }
      return new AskedGroup("", 1, false, Optional.of(job), List.of(), List.of());
    }

    /** The parts of a kit, bought once. */
    public static AskedGroup ofKit(String name) {
      return new AskedGroup("", 1, false, Optional.empty(), List.of(), List.of(name));
    }

    AskedGroup with(List<String> names) {
      return new AskedGroup(title, count, optional, job, parts, names);
    }

    /** With the parts and kits of another beside its own. */
    AskedGroup and(AskedGroup other) {
      return new AskedGroup(
          title,
          count,
          optional,
          job,
          Stream.concat(parts.stream(), other.parts.stream()).toList(),
          Stream.concat(kits.stream(), other.kits.stream()).toList());
    }

    /**
     * The same under a heading.
     *
     * @param other its title; empty for the one it has
     */
    AskedGroup as(String other, int times, boolean beside) {
      return new AskedGroup(other.isEmpty() ? title : other, times, beside, job, parts, kits);
    }

    /** Parts alone, bought once. */
    public static AskedGroup of(String title, List<String> parts) {
      return new AskedGroup(title, 1, false, Optional.empty(), parts, List.of());
    }
  }
}
