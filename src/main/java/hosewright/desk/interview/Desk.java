package hosewright.desk.interview;

import hosewright.catalogue.Catalogue;
import hosewright.job.Job;
import hosewright.line.model.LinePlan;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * What lies on the desk of whoever asks: read once, so that nobody is kept from the books while a
 * person thinks.
 *
 * @param customers names of the customers there are, by their identifiers
 * @param districts districts in the register of local threads
 * @param plan plans a job on the books as they were read
 * @param draft where answers are kept until the interview is over
 */
public record Desk(
    Catalogue catalogue,
    Map<String, String> customers,
    List<String> districts,
    Function<Job, LinePlan> plan,
    Path draft) {
  public Desk {
    customers = Collections.unmodifiableMap(new LinkedHashMap<>(customers));
    districts = List.copyOf(districts);
  }
}
