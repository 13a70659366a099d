package hosewright.desk.end;

import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.thread.End;
import hosewright.thread.Families;
import hosewright.thread.Family;
import hosewright.thread.Gender;
import hosewright.thread.ThreadDimensions;
import hosewright.thread.ThreadTable;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Lists thread and coupling families, or the ends of one. */
public final class ListEnds {

  /**
   * What was asked for.
   *
   * @param families all of them, or the one named
   * @param ends the ends of the one named; none where all families are listed
   */
  public record Listed(List<FamilyRow> families, List<EndRow> ends) {}

  /** A family with the nominal sizes it is made in. */
  public record FamilyRow(
      String family, String name, String kind, List<Double> sizesIn, String source) {}

  /** An end with what its male measures; null where no figure is held. */
  public record EndRow(
      String end, Double majorDiameterIn, Double threadsPerInch, String standard, String source) {}

  /**
   * The list.
   *
   * @param family code or name of one family; empty for all
   * @throws BadInputException naming the nearest where there is no such family
   */
  public Listed list(Optional<String> family) {
    return family
        .map(named -> Families.find(named).orElseThrow(() -> unknown(named)))
        .map(one -> new Listed(List.of(row(one)), ends(one)))
        .orElseGet(
            () -> new Listed(Families.all().stream().map(ListEnds::row).toList(), List.of()));
  }

  private static BadInputException unknown(String named) {
    List<String> codes = Families.all().stream().map(Family::code).toList();
    return new BadInputException(
        List.of(
            new Problem(
                "family", named, "one of " + String.join(", ", codes), Nearest.to(named, codes))));
  }

  private static FamilyRow row(Family family) {
    return new FamilyRow(
        family.code(),
        family.name(),
        family.kind().word(),
        family.sizesIn(),
        family.figures().source());
  }

  private static List<EndRow> ends(Family family) {
    return Families.ends().stream()
        .filter(end -> end.family().equals(family.code()) && !end.swivel())
        .map(ListEnds::row)
        .toList();
  }

  private static EndRow row(End end) {
    Optional<ThreadDimensions> figures = ThreadTable.find(end);
    return new EndRow(
        end.toString(),
        end.gender() == Gender.FEMALE
            ? null
            : figures.flatMap(f -> boxed(f.majorMaxIn())).orElse(null),
        figures.flatMap(f -> boxed(f.threadsPerInch())).orElse(null),
        figures.map(held -> held.origin().standard()).orElse(""),
        figures.map(held -> held.origin().source()).orElse(""));
  }

  private static Optional<Double> boxed(OptionalDouble number) {
    return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
  }
}
