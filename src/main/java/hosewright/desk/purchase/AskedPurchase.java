package hosewright.desk.purchase;

import hosewright.job.question.JobField;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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

  /**
   * A job, or a list of parts.
   *
   * @param title empty for the title of the job
   * @param count how often the whole of it is bought
   * @param optional whether it is offered beside the total
   * @param job answers of a job; empty for parts alone
   * @param parts as a seller writes them: {@code 4 x nozzle 1.5 NH 150 gpm 100 psi}
   * @param kits names of kits whose parts go into it
   */
  public record AskedGroup(
      String title,
      int count,
      boolean optional,
      Optional<Map<JobField, String>> job,
      List<String> parts,
      List<String> kits) {
    public AskedGroup {
      job = job.map(Map::copyOf);
      parts = List.copyOf(parts);
      kits = List.copyOf(kits);
    }

    /** One job, bought once. */
    public static AskedGroup of(Map<JobField, String> job) {
      return new AskedGroup("", 1, false, Optional.of(job), List.of(), List.of());
    }

    /** The parts of a kit, bought once. */
    public static AskedGroup ofKit(String name) {
      return new AskedGroup("", 1, false, Optional.empty(), List.of(), List.of(name));
    }

    /** Parts alone, bought once. */
    public static AskedGroup of(String title, List<String> parts) {
      return new AskedGroup(title, 1, false, Optional.empty(), parts, List.of());
    }
  }
}
