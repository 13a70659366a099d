package hosewright.desk.purchase;

import hosewright.catalogue.Catalogue;
import hosewright.desk.Books;
import hosewright.desk.Kits;
import hosewright.desk.interview.Asker;
import hosewright.desk.words.ItemWords;
import hosewright.quote.terms.Customers;
import hosewright.thread.LocalThreads;
import java.util.Optional;

/**
 * What a purchase needs of the dealer's books to be planned, so that they need not stay open.
 *
 * @param words finds the items that parts are named by
 */
public record Dealer(
    Catalogue catalogue,
    Customers customers,
    LocalThreads localThreads,
    Kits kits,
    ItemWords words) {

  /** Of these books, to be used when they are closed again; nobody is asked. */
  public static Dealer kept(Books open) {
    return new Dealer(
        open.catalogue(), open.customers(), open.localThreads(), open.kits(), ItemWords.kept(open));
  }

  /**
   * Of these books.
   *
   * @param asker asked where words could mean several items; empty in a script
   */
  public static Dealer of(Books open, Optional<Asker> asker) {
    return new Dealer(
        open.catalogue(),
        open.customers(),
        open.localThreads(),
        open.kits(),
        ItemWords.in(open, asker));
  }
}
