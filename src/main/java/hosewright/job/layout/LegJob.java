package hosewright.job.layout;

import hosewright.job.Job;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A leg of a layout, or several that part at one place and meet at another.
 *
 * @param behind the leg where whose end it begins; empty where it begins at the source
 * @param copies how many like it begin there, each with an end of its own
 * @param job what is asked of it alone; between legs its ends are those that a plan chooses, and
 *     its need is what the legs behind it turn out to need
 * @param last whether it ends at an appliance
 * @param joined those that lie side by side and share its flow so that each loses as much, with an
 *     even share of it; none for one leg
 */
public record LegJob(
    String name, Optional<String> behind, int copies, Job job, boolean last, List<LegJob> joined) {
  public LegJob {
    joined = List.copyOf(joined);
  }

  /** One leg. */
  public LegJob(String name, Optional<String> behind, int copies, Job job, boolean last) {
    this(name, behind, copies, job, last, List.of());
  }

  /** Flow of all its copies together, US gal/min. */
  public double flowGpm() {
    return job.flowGpm() * copies;
  }

  /** Those it is made of, by themselves: itself where it is one. */
  public List<LegJob> members() {
    return joined.isEmpty() ? List.of(this) : joined;
  }

  /** How many outlets it takes where it begins, and inlets where it ends. */
  public int outlets() {
    return joined.isEmpty() ? copies : joined.size();
  }

  /** Flow through each of its outlets where all pass as much, US gal/min. */
  public double eachGpm() {
    return flowGpm() / outlets();
  }

  /** The same with its prices of a day, where it names none. */
  LegJob on(LocalDate day) {
    return new LegJob(
        name,
        behind,
        copies,
        job.on(day),
        last,
        joined.stream().map(member -> member.on(day)).toList());
  }
}
