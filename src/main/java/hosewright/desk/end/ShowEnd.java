package hosewright.desk.end;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.desk.Refusals;
import hosewright.paper.drawing.EndDrawing;
import hosewright.paper.page.Export;
import hosewright.problem.BadInputException;
import hosewright.thread.CouplingSize;
import hosewright.thread.End;
import hosewright.thread.Families;
import hosewright.thread.Family;
import hosewright.thread.Mating;
import hosewright.thread.ThreadDimensions;
import hosewright.thread.ThreadTable;
import java.util.List;
import java.util.Optional;

/** Shows one end: its figures, what it joins, and a drawing to scale. */
public final class ShowEnd {

  /**
   * An end as scripts read it.
   *
   * @param figures its dimensions, inches or millimetres as named; empty where none are held
   * @param joins every end that mates with it
   * @param picture the file drawn; null when none was asked for
   */
  public record Shown(
      End end,
      @JsonUnwrapped Kind family,
      List<Figure> figures,
      @JsonUnwrapped Basis basis,
      List<End> joins,
      String picture) {

    /** What family it is of. */
    public record Kind(String familyName, String kind, String seal) {}

    /** What its figures rest on. */
    public record Basis(
        String standard, String table, String confidence, String source, String note) {}
  }

  /** One figure with the name of what it measures, and its unit. */
  public record Figure(String name, double value, String unit) {}

  /**
   * The end.
   *
   * @param words size, family and half
   * @param picture the file to draw it into; empty for none
   * @throws BadInputException when there is no such end, or no such file can be made
   */
  public Shown show(String words, Optional<PictureFile> picture) {
    End end = Refusals.named("end", () -> End.parse(words));
    if (!end.listed()) {
      throw new BadInputException("end", end.toString(), "an end that 'end list' names");
    }
    Optional<Export> place = picture.map(PictureFile::place);
    return shown(end, PictureFile.draw(place, () -> EndDrawing.svg(end)));
  }

  private static Shown shown(End end, String picture) {
    Family family = Families.find(end.family()).orElseThrow();
    Optional<ThreadDimensions> thread = ThreadTable.find(end);
    Optional<CouplingSize> coupling = CouplingSize.find(end.family(), end.sizeIn());
    List<End> joins =
        Families.ends().stream().filter(other -> Mating.of(end, other).mates()).toList();
    return new Shown(
        end,
        new Shown.Kind(family.name(), family.kind().word(), family.sealing().seal()),
        thread.map(EndFigures::of).or(() -> coupling.map(EndFigures::of)).orElse(List.of()),
        new Shown.Basis(
            thread
                .map(held -> held.origin().standard())
                .or(() -> coupling.map(held -> held.origin().standard()))
                .orElse(""),
            thread.map(held -> held.origin().table()).orElse(""),
            thread
                .map(held -> held.origin().confidence())
                .or(() -> coupling.map(held -> held.origin().confidence()))
                .orElse(""),
            thread
                .map(held -> held.origin().source())
                .or(() -> coupling.map(held -> held.origin().source()))
                .orElse(family.figures().source()),
            thread
                .map(held -> held.origin().note())
                .or(() -> coupling.map(held -> held.origin().note()))
                .orElse("")),
        joins,
        picture);
  }
}
