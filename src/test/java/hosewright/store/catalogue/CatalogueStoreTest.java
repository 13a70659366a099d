package hosewright.store.catalogue;

import static hosewright.store.db.Tables.CATALOGUE_LOAD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CatalogueFiles;
import hosewright.catalogue.CostRow;
import hosewright.catalogue.Item;
import hosewright.catalogue.PriceRow;
import hosewright.csv.CsvText;
import hosewright.quote.terms.CustomerFiles;
import hosewright.quote.terms.CustomerReader;
import hosewright.quote.terms.Customers;
import hosewright.quote.terms.DealerTerms;
import hosewright.quote.terms.MarginFloors;
import hosewright.quote.terms.TermsReader;
import hosewright.store.database.BooksOn;
import hosewright.store.database.Database;
import hosewright.store.quote.CustomerStore;
import hosewright.store.quote.TermsStore;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.jooq.exception.DataAccessException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(BooksOn.class)
final class CatalogueStoreTest {
  private static final Instant JANUARY = Instant.parse("2026-01-05T08:00:00Z");
  private static final Instant JULY = Instant.parse("2026-07-01T08:00:00Z");

  @Parameter BooksOn books;
  @TempDir Path folder;

  @Test
  void a_reopened_store_gives_the_catalogue_back_with_every_field() {
    Catalogue put = new CatalogueFiles().read();

    replace(put, JANUARY);

    sameInEveryField(loaded(), put);
  }

  @Test
  void what_is_put_in_together_stays_out_together_when_one_part_fails() {
    try (Database database = books.open(folder)) {
      assertThatThrownBy(
              () ->
                  database.together(
                      inside -> {
                        new CatalogueStore(inside)
                            .replace(new CatalogueFiles().read(), JANUARY, "");
                        throw new IllegalStateException("the customers would not go in");
                      }))
          .isInstanceOf(IllegalStateException.class);
      assertThat(new CatalogueStore(database).load().items()).isEmpty();
    }
  }

  @Test
  void a_new_catalogue_takes_the_place_of_the_old_one_whole() {
    replace(new CatalogueFiles().read(), JANUARY);
    Catalogue put =
        new CatalogueFiles()
            .with("items.csv", "N95,nozzle", "N100,nozzle")
            .with(
                "items.csv",
                "2.5 NH male x 2.5 NH female swivel",
                "2.5 NPSH male x 2.5 NPSH female swivel")
            .with("items.csv", "73:250;120:200;180:120.5", "73:225")
            .with("items.csv", "water;foam", "water")
            .with("prices.csv", "B15,2026-01-01,,1,3.10,USD\n", "")
            .with("costs.csv", "139.99", "138.5")
            .read();

    replace(put, JULY);

    sameInEveryField(loaded(), put);
  }

  @Test
  void an_item_that_was_dropped_may_come_back() {
    Catalogue first = new CatalogueFiles().read();
    replace(first, JANUARY);
    replace(new CatalogueFiles().with("items.csv", "N95,nozzle", "N100,nozzle").read(), JULY);

    replace(first, JULY.plusSeconds(1));

    sameInEveryField(loaded(), first);
  }

  @Test
  void a_catalogue_that_cannot_be_kept_changes_nothing() {
    Catalogue first = new CatalogueFiles().read();
    replace(first, JANUARY);
    Catalogue other = new CatalogueFiles().with("items.csv", "Fog nozzle", "Jet nozzle").read();
    CostRow ofNobody =
        new CostRow("B15", "NOBODY", LocalDate.of(2026, 1, 1), Optional.empty(), usd("1.00"));
    Catalogue broken =
        new Catalogue(other.items(), List.of(), List.of(ofNobody), other.suppliers());

    assertThatThrownBy(() -> replace(broken, JULY)).isInstanceOf(DataAccessException.class);

    sameInEveryField(loaded(), first);
    try (Database database = books.open(folder)) {
      assertThat(database.context().fetchCount(CATALOGUE_LOAD)).isEqualTo(1);
    }
  }

  @Test
  void a_price_that_was_replaced_stays_in_the_history_with_when_it_came_and_went() {
    replace(new CatalogueFiles().read(), JANUARY);
    replace(new CatalogueFiles().with("prices.csv", ",3.10,", ",3.25,").read(), JULY);

    try (Database database = books.open(folder)) {
      assertThat(new CatalogueStore(database).priceHistory("B15"))
          .extracting(
              row -> row.price().unitPrice(),
              row -> row.broughtBy().loadedAt(),
              row -> row.replacedBy().map(CatalogueStore.Load::loadedAt))
          .containsExactly(
              tuple(usd("3.10"), JANUARY, Optional.of(JULY)),
              tuple(usd("3.25"), JULY, Optional.empty()));
    }
  }

  @Test
  void loading_the_same_catalogue_again_adds_nothing_to_the_history() {
    replace(new CatalogueFiles().read(), JANUARY);
    replace(new CatalogueFiles().read(), JULY);

    try (Database database = books.open(folder)) {
      assertThat(new CatalogueStore(database).priceHistory("H25-50"))
          .hasSize(3)
          .allSatisfy(row -> assertThat(row.broughtBy().loadedAt()).isEqualTo(JANUARY))
          .allSatisfy(row -> assertThat(row.replacedBy()).isEmpty());
    }
  }

  @Test
  void the_history_of_an_item_outlives_its_listing() {
    replace(new CatalogueFiles().read(), JANUARY);
    replace(
        new CatalogueFiles()
            .with("items.csv", "TEST,service", "TAG,service")
            .with("prices.csv", "TEST,2026", "TAG,2026")
            .read(),
        JULY);

    try (Database database = books.open(folder)) {
      CatalogueStore store = new CatalogueStore(database);
      assertThat(store.load().item("TEST")).isEmpty();
      assertThat(store.priceHistory("TEST"))
          .extracting(CatalogueStore.LoadedPrice::price)
          .containsExactly(
              new PriceRow("TEST", LocalDate.of(2026, 1, 1), Optional.empty(), 1, usd("12.00")));
    }
  }

  @Test
  void a_reopened_store_gives_customers_and_terms_back_with_every_field() {
    Catalogue catalogue = new CatalogueFiles().read();
    Customers customers =
        CustomerReader.readTables(
            CsvText.all(new CustomerFiles().readers()), catalogue, MarginFloors.NONE);
    DealerTerms terms =
        TermsReader.readTables(CsvText.all(new CustomerFiles().readers()), catalogue.currency());
    replace(catalogue, JANUARY);
    for (int time = 1; time <= 2; time++) {
      try (Database database = books.open(folder)) {
        new CustomerStore(database).replace(customers);
        new TermsStore(database).replace(terms);
      }
    }

    try (Database database = books.open(folder)) {
      Customers kept = new CustomerStore(database).load();
      assertThat(kept.customers()).containsExactlyInAnyOrderElementsOf(customers.customers());
      assertThat(kept.contractPrices())
          .containsExactlyInAnyOrderElementsOf(customers.contractPrices());
      assertThat(new TermsStore(database).load()).isEqualTo(terms);
    }
  }

  @Test
  void one_buyer_may_be_added_or_changed_alone() {
    Catalogue catalogue = new CatalogueFiles().read();
    Customers customers =
        CustomerReader.readTables(
            CsvText.all(new CustomerFiles().readers()), catalogue, MarginFloors.NONE);
    replace(catalogue, JANUARY);
    try (Database database = books.open(folder)) {
      CustomerStore store = new CustomerStore(database);
      store.replace(customers);

      store.save(customers.byId().get("PHFD"), customers.contractPrices().subList(2, 3));

      assertThat(store.load().customers())
          .containsExactlyInAnyOrderElementsOf(customers.customers());
      assertThat(store.load().contractPrices()).containsExactly(customers.contractPrices().get(2));
    }
  }

  private void replace(Catalogue catalogue, Instant at) {
    try (Database database = books.open(folder)) {
      new CatalogueStore(database).replace(catalogue, at, "");
    }
  }

  private Catalogue loaded() {
    try (Database database = books.open(folder)) {
      return new CatalogueStore(database).load();
    }
  }

  private static void sameInEveryField(Catalogue kept, Catalogue put) {
    assertThat(kept.items()).isNotEmpty().isEqualTo(put.items());
    assertThat(kept.suppliers()).isNotEmpty().isEqualTo(put.suppliers());
    for (Item item : put.items()) {
      assertThat(kept.priceHistory(item.number())).isEqualTo(put.priceHistory(item.number()));
      assertThat(kept.costHistory(item.number())).isEqualTo(put.costHistory(item.number()));
    }
  }

  private static Money usd(String amount) {
    return Money.parse("USD " + amount);
  }
}
