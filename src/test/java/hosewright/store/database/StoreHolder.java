package hosewright.store.database;

import hosewright.quote.terms.DealerTerms;
import hosewright.store.quote.TermsStore;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Another process with the store open: keeps it until its standard input ends. */
final class StoreHolder {
  private StoreHolder() {}

  public static void main(String[] args) throws IOException {
    try (Database database = Database.open(Path.of(args[0]))) {
      new TermsStore(database).replace(new DealerTerms(List.of(), Map.of("town", "Port Harlow")));
      System.out.println("open");
      while (System.in.read() >= 0) {
        // Nothing is said to us; the end of input is what we wait for.
      }
    }
  }
}
