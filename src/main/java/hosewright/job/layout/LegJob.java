package hosewright.job.layout;

import hosewright.job.Job;
import java.util.Optional;

/**
 * A leg of a layout.
 *
 * @param behind the leg where whose end it begins; empty where it begins at the source
 * @param copies how many like it begin there, each with an end of its own
 * @param job what is asked of it alone; between legs its ends are those that a plan chooses, and
 *     its need is what the legs behind it turn out to need
 * @param last whether it ends at an appliance
 */
public record LegJob(String name, Optional<String> behind, int copies, Job job, boolean last) {

  /** Flow of all its copies together, US gal/min. */
  public double flowGpm() {
    return job.flowGpm() * copies;
  }
}
