package hosewright.desk.kit;

import hosewright.desk.Books;
import hosewright.desk.Kits;
import hosewright.desk.Refusals;
import hosewright.desk.words.ItemWords;
import hosewright.desk.words.WantedLine;
import hosewright.quote.ExtraLine.Inclusion;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Keeps a list of parts under a name. */
public final class AddKit {
  private final Supplier<Books> books;

  public AddKit(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param lines parts as a seller writes them, with how they are counted
   * @param overwrite whether a kit of that name may be replaced
   */
  public record Request(String name, List<String> lines, boolean overwrite) {
    public Request {
      lines = List.copyOf(lines);
    }
  }

  /**
   * The kit, kept.
   *
   * @throws hosewright.problem.BadInputException naming every line that is no part; nothing is kept
   *     then
   */
  public Kits.Kit add(Request asked) {
    try (Books open = books.get()) {
      WantedLine wanted =
          new WantedLine(ItemWords.in(open, Optional.empty()), open.catalogue().currencyNeeded());
      Refusals refusals = new Refusals();
      for (String line : asked.lines()) {
        refusals.read(
            () ->
                wanted.read("add", KitPart.of(line).text(), Inclusion.INCLUDED, Optional.empty()));
      }
      refusals.throwAny();
      return open.kits().keep(asked.name(), asked.lines(), asked.overwrite());
    }
  }
}
