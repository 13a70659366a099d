package hosewright.line.goods;

import hosewright.catalogue.HoseType;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.Sort;
import hosewright.catalogue.Stated;
import hosewright.job.Job;
import hosewright.job.question.ApplianceKind;
import hosewright.job.question.Asked;
import hosewright.job.question.SourceKind;
import hosewright.line.assembly.Split;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What was asked for and has no place in a line, with the reason. */
final class Misfits {
  private final Job job;
  private final Candidates candidates;
  private final List<Problem> problems = new ArrayList<>();

  Misfits(Job job, Candidates candidates) {
    this.job = job;
    this.candidates = candidates;
  }

  /**
   * Refuses them all at once.
   *
   * @param inLine the items that could stand in the line where something is asked for
   */
  void refuse(Function<String, List<Item>> inLine) {
    for (String wanted : job.accessories()) {
      Asked asked = Asked.of(wanted);
      Meant meant = candidates.meant(asked.what());
      drawing(wanted, meant);
      loose(wanted, asked, meant, inLine.apply(wanted));
      underPressure(wanted, meant);
      secondShutoff(wanted, meant);
      dividing(wanted, meant);
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }

  private void add(String wanted, String allowed) {
    problems.add(Problem.of("accessories", wanted, allowed));
  }

  /** A pump pushes the water through every line planned; nothing draws it. */
  private void drawing(String wanted, Meant meant) {
    boolean draws =
        job.source() != SourceKind.OPEN_WATER
            && (meant.item().map(item -> item.hoseType() == HoseType.SUCTION).orElse(false)
                || meant.sorts().stream()
                    .anyMatch(sort -> sort == Sort.FOOT_VALVE || sort == Sort.STRAINER));
    if (draws) {
      add(
          wanted,
          "goods for a line under pressure: suction goods have no place in it, since nothing draws"
              + " the water here. 'from: open water' with a leg that ends at a pump takes them");
    }
  }

  /** A place between sections is for what has two ends; one thing stands at one place. */
  private void loose(String wanted, Asked asked, Meant meant, List<Item> inLine) {
    if (!Candidates.standsInLine(meant.kind())) {
      return;
    }
    if (asked.stationFt().isPresent() && inLine.isEmpty()) {
      add(
          wanted,
          "a device with two ends to stand between two sections, and the catalogue has no such one"
              + " for this use");
    }
    if (asked.count().orElse(1) > 1 && !inLine.isEmpty()) {
      add(
          wanted,
          "one at each place: name the places, such as valve at source, valve at appliance");
    }
  }

  private void underPressure(String wanted, Meant meant) {
    boolean opensFreely =
        job.appliance() == ApplianceKind.TANK
            && job.accessories().stream()
                .map(other -> candidates.meant(Asked.of(other).what()))
                .noneMatch(other -> other.kind() == ItemKind.VALVE);
    if (meant.sorts().contains(Sort.VACUUM_BREAKER) && !opensFreely) {
      add(
          wanted,
          "a backflow preventer for constant pressure, such as one of reduced pressure: a vacuum"
              + " breaker is not made for a line that is shut behind it");
    }
  }

  private void secondShutoff(String wanted, Meant meant) {
    if (!meant.sorts().contains(Sort.NOZZLE_SHUTOFF)) {
      return;
    }
    job.accessories().stream()
        .flatMap(other -> candidates.meant(Asked.of(other).what()).item().stream())
        .filter(item -> item.kind() == ItemKind.NOZZLE)
        .filter(item -> item.form().shutoff() == Stated.YES)
        .findFirst()
        .ifPresent(
            nozzle ->
                add(
                    wanted,
                    "no second shutoff: the nozzle "
                        + nozzle.number()
                        + " has one of its own; a tip without one takes it"));
  }

  private void dividing(String wanted, Meant meant) {
    Optional<Item> named = meant.item();
    int lines = job.appliances();
    if (lines > 1 && named.filter(item -> item.kind() == ItemKind.WYE).isPresent()) {
      if (Split.asWye(named.get(), lines).isEmpty()) {
        add(wanted, "a wye with one inlet and " + lines + " like outlets, one for each line");
      }
    }
    int outlets = job.outlets();
    if (outlets > 1 && named.filter(item -> item.kind() == ItemKind.SIAMESE).isPresent()) {
      if (Split.asSiamese(named.get(), outlets).isEmpty()) {
        add(wanted, "a siamese with " + outlets + " like inlets, one for each outlet");
      }
    }
  }
}
