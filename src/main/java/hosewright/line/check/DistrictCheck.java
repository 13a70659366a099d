package hosewright.line.check;

import static hosewright.line.check.Checks.check;

import hosewright.job.Job;
import hosewright.job.question.SourceKind;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Placed;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import hosewright.line.model.Role;
import hosewright.thread.End;
import hosewright.thread.LocalThreads;
import hosewright.thread.LocalThreads.LocalThread;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Compares a plan's threads with those of the district it is laid in. It only ever warns: the
 * register is the dealer's own, and may be old.
 */
public final class DistrictCheck {

  private DistrictCheck() {}

  /**
   * The check for a plan.
   *
   * @return empty when the job names no district
   */
  public static Optional<Check> of(Job job, Assembly line, LocalThreads register) {
    return job.district().map(district -> of(district, ends(job, line), register));
  }

  private static Check of(String district, Collection<End> ends, LocalThreads register) {
    List<LocalThread> rows = register.find(district);
    List<String> doubts = new ArrayList<>();
    if (rows.isEmpty()) {
      doubts.add(
          district
              + " is not in your register of local threads: check with the local fire service");
      return warned(0, ends.size(), doubts);
    }
    for (End end : ends) {
      doubt(district, end, rows).ifPresent(doubts::add);
    }
    int agree = ends.size() - doubts.size();
    return doubts.isEmpty()
        ? check(
            CheckId.LOCAL_THREAD,
            Outcome.PASS,
            agree,
            ends.size(),
            "threads",
            district + " uses the same, by your register",
            Checks.PRACTICE)
        : warned(agree, ends.size(), doubts);
  }

  private static Check warned(int agree, int all, List<String> doubts) {
    return check(
        CheckId.LOCAL_THREAD,
        Outcome.WARN,
        agree,
        all,
        "threads",
        String.join("; ", doubts),
        Checks.PRACTICE);
  }

  private static Optional<String> doubt(String district, End end, List<LocalThread> rows) {
    List<LocalThread> sameSize =
        rows.stream().filter(row -> row.end().sizeIn() == end.sizeIn()).toList();
    String name = end.sizeAndFamily();
    if (sameSize.isEmpty()) {
      return Optional.of(
          "your register says nothing of that size for "
              + district
              + ", where "
              + name
              + " is planned: check with the local fire service");
    }
    if (sameSize.stream().anyMatch(row -> row.end().family().equals(end.family()))) {
      return Optional.empty();
    }
    LocalThread local = sameSize.get(0);
    return Optional.of(
        "%s uses %s (checked %s, %s), the plan has %s: check with the local fire service"
            .formatted(
                district, local.end().sizeAndFamily(), local.checkedOn(), local.checkedBy(), name));
  }

  /** The district meets the hose's couplings, and the outlet where that is its own hydrant. */
  private static Collection<End> ends(Job job, Assembly line) {
    Map<String, End> ends = new LinkedHashMap<>();
    if (job.source() == SourceKind.HYDRANT) {
      ends.put(job.from().sizeAndFamily(), job.from());
    }
    for (Placed part : line.parts()) {
      if (part.role() == Role.HOSE) {
        part.upstream().ifPresent(end -> ends.put(end.sizeAndFamily(), end));
      }
    }
    return ends.values();
  }
}
