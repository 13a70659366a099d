package hosewright.line.goods;

import hosewright.line.model.Unpriced;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a line takes before it is priced, its gaskets left out.
 *
 * @param needs items of the line itself, each once
 * @param lacking parts of the line that nobody stocks
 * @param sealant whether some joint is sealed on its threads
 * @param pieces what was asked for besides the line
 */
public record Wanted(
    List<Basket.Need> needs, List<Unpriced> lacking, boolean sealant, List<Piece> pieces) {

  public static final Wanted NOTHING = new Wanted(List.of(), List.of(), false, List.of());

  public Wanted {
    needs = List.copyOf(needs);
    lacking = List.copyOf(lacking);
    pieces = List.copyOf(pieces);
  }

  /** What two parts of a layout take together. */
  public Wanted and(Wanted other) {
    Basket both = new Basket();
    Stream.concat(needs.stream(), other.needs.stream())
        .forEach(need -> both.add(need.item(), need.quantity()));
    return new Wanted(
        both.needs(),
        Stream.concat(lacking.stream(), other.lacking.stream()).toList(),
        sealant || other.sealant,
        Stream.concat(pieces.stream(), other.pieces.stream()).toList());
  }
}
