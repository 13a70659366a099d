package hosewright.desk.end;

import hosewright.desk.Books;
import hosewright.desk.Refusals;
import hosewright.paper.drawing.JointDrawing;
import hosewright.paper.page.Export;
import hosewright.thread.End;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.Optional;
import java.util.function.Supplier;

/** Says whether two ends join, how the joint seals, and whether it comes apart. */
public final class CheckJoint {
  private final Supplier<Books> books;

  /**
   * @param books opened only where the ends do not mate
   */
  public CheckJoint(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * Two ends held against each other.
   *
   * @param instead what to buy where they do not mate
   * @param picture the file drawn; null when none was asked for
   */
  public record Checked(End a, End b, Verdict verdict, Instead instead, String picture) {}

  /**
   * The verdict.
   *
   * @param a one end in words
   * @param b the other
   * @param picture the file to draw the joint into; empty for none
   * @throws hosewright.problem.BadInputException naming everything that cannot be used
   */
  public Checked check(String a, String b, Optional<PictureFile> picture) {
    Refusals refusals = new Refusals();
    Optional<End> one = refusals.read("a", () -> End.parse(a));
    Optional<End> other = refusals.read("b", () -> End.parse(b));
    Optional<Optional<Export>> place = refusals.read(() -> picture.map(PictureFile::place));
    refusals.throwAny();
    return checked(one.orElseThrow(), other.orElseThrow(), place.orElseThrow());
  }

  private Checked checked(End a, End b, Optional<Export> place) {
    Verdict verdict = Mating.of(a, b);
    String picture = PictureFile.draw(place, () -> JointDrawing.svg(a, b, verdict));
    Instead instead = verdict.mates() ? Instead.NOTHING : Instead.of(a, b, books);
    return new Checked(a, b, verdict, instead, picture);
  }
}
