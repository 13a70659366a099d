package hosewright.quote.terms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CatalogueFiles;
import hosewright.csv.CsvText;
import hosewright.problem.BadInputException;
import hosewright.problem.NoSuchThingException;
import hosewright.problem.Problem;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class CustomerReaderTest {
  private static final Catalogue CATALOGUE = new CatalogueFiles().read();

  private final CustomerFiles files = new CustomerFiles();

  @Test
  void a_buyer_has_the_contract_prices_of_the_day() {
    Customers customers =
        CustomerReader.readTables(CsvText.all(files.readers()), CATALOGUE, MarginFloors.NONE);

    assertThat(customers.find("PHFD", LocalDate.of(2026, 6, 30)))
        .contains(
            new Customer(
                "PHFD",
                "Port Harlow Fire District",
                "1 Quay Road\nPort Harlow",
                new Customer.Pricing(
                    "agency", new BigDecimal("0.1"), Map.of("H25-50", usd("190.00"))),
                new Customer.Taxation(
                    "Harlow county tax",
                    new BigDecimal("0.0625"),
                    Optional.of(new Customer.Exemption("EX-0042", LocalDate.of(2026, 1, 15)))),
                "prepaid and added"));
    assertThat(customers.get("PHFD", LocalDate.of(2026, 7, 1)).pricing().contractPrices())
        .isEqualTo(Map.of("H25-50", usd("195.00"), "B15", usd("2.80")));
  }

  @Test
  void an_id_nobody_has_is_refused_with_the_nearest_one() {
    Customers customers =
        CustomerReader.readTables(CsvText.all(files.readers()), CATALOGUE, MarginFloors.NONE);

    assertThatThrownBy(() -> customers.get("PHDF", LocalDate.of(2026, 7, 1)))
        .isInstanceOf(NoSuchThingException.class)
        .hasMessageStartingWith("There is no customer PHDF: ")
        .hasMessageEndingWith("Did you mean 'PHFD'?");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          customers.csv       | agency,0.10         | agency,10           | customers.csv line 2 column discount
          customers.csv       | 0.0625,EX-0042      | 6.25%,EX-0042       | customers.csv line 2 column tax_rate
          customers.csv       | EX-0042,2026-01-15  | EX-0042,            | customers.csv line 2 column exemption_date
          customers.csv       | EX-0042,2026-01-15  | ,2026-01-15         | customers.csv line 2 column exemption_certificate
          customers.csv       | WALKIN              | phfd                | customers.csv line 4 column id
          contract-prices.csv | PHFD,B15            | PHDF,B15            | contract-prices.csv line 4 column customer
          contract-prices.csv | PHFD,B15            | PHFD,B51            | contract-prices.csv line 4 column item
          contract-prices.csv | 2026-06-30          | 2026-07-31          | contract-prices.csv line 3 column from
          contract-prices.csv | 2.80,USD            | 2.80,EUR            | contract-prices.csv line 4 column currency
          """)
  void a_bad_cell_is_named(String file, String piece, String replacement, String field) {
    files.with(file, piece, replacement);

    BadInputException refused =
        catchThrowableOfType(
            BadInputException.class,
            () ->
                CustomerReader.readTables(
                    CsvText.all(files.readers()), CATALOGUE, MarginFloors.NONE));

    assertThat(refused).isNotNull();
    assertThat(refused.problems()).extracting(Problem::field).containsExactly(field);
  }

  @Test
  void freight_is_that_of_the_first_band_heavy_enough_and_unknown_above_the_last() {
    DealerTerms terms =
        TermsReader.readTables(CsvText.all(files.readers()), Optional.of(CurrencyUnit.USD));

    assertThat(terms.freightFor(0)).contains(usd("14.50"));
    assertThat(terms.freightFor(70)).contains(usd("14.50"));
    assertThat(terms.freightFor(70.1)).contains(usd("38.00"));
    assertThat(terms.freightFor(151)).isEmpty();
  }

  @Test
  void dealer_settings_are_read_by_key() {
    DealerTerms terms = TermsReader.readTables(CsvText.all(files.readers()), Optional.empty());

    assertThat(terms.settings())
        .isEqualTo(Map.of("name", "Quillback Hose & Coupling", "town", "Port Harlow", "note", ""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          freight.csv | 150.5,    | 70,      | freight.csv line 3 column up_to_lb
          freight.csv | 38.00     | -38      | freight.csv line 3 column charge
          freight.csv | 38.00,USD | 38,CAD   | freight.csv line 3 column currency
          dealer.csv  | town,     | name,    | dealer.csv line 3 column key
          """)
  void a_bad_term_is_named(String file, String piece, String replacement, String field) {
    files.with(file, piece, replacement);

    BadInputException refused =
        catchThrowableOfType(
            BadInputException.class,
            () ->
                TermsReader.readTables(
                    CsvText.all(files.readers()), Optional.of(CurrencyUnit.USD)));

    assertThat(refused).isNotNull();
    assertThat(refused.problems()).extracting(Problem::field).containsExactly(field);
  }

  private static Money usd(String amount) {
    return Money.parse("USD " + amount);
  }
}
