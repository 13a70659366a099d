package hosewright.desk.end;

import hosewright.desk.BooksPlace;
import hosewright.desk.LocalRegister;
import hosewright.thread.LocalThreads;
import java.util.List;

/** Offers the districts in the register of local threads. */
public final class OfferDistricts {
  private final BooksPlace place;

  public OfferDistricts(BooksPlace place) {
    this.place = place;
  }

  /**
   * The districts; none where no register is kept.
   *
   * @throws hosewright.problem.BadInputException naming every cell of it that is wrong
   */
  public List<String> districts() {
    return LocalRegister.in(place.where()).read().map(LocalThreads::districts).orElse(List.of());
  }
}
