package hosewright.door.shell;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** What a quote comes to, worked out from a dealer's files by somebody who has only those. */
final class PaperAndPencil {
  private final Path catalogue;

  PaperAndPencil(Path catalogue) {
    this.catalogue = catalogue;
  }

  /** Sums of a quote in cents. */
  record Sums(BigDecimal subtotal, BigDecimal freight, BigDecimal tax) {
    BigDecimal total() {
      return subtotal.add(freight).add(tax);
    }
  }

  /**
   * The sums for a buyer.
   *
   * @param quantities pieces by item
   */
  Sums sums(String customer, Map<String, Integer> quantities) {
    CSVRecord buyer = row("customers.csv", "id", customer);
    BigDecimal subtotal = cents(BigDecimal.ZERO);
    BigDecimal weightLb = BigDecimal.ZERO;
    for (Map.Entry<String, Integer> line : quantities.entrySet()) {
      BigDecimal count = BigDecimal.valueOf(line.getValue());
      subtotal = subtotal.add(each(buyer, line.getKey(), line.getValue()).multiply(count));
      weightLb =
          weightLb.add(
              new BigDecimal(row("items.csv", "number", line.getKey()).get("weight_lb"))
                  .multiply(count));
    }
    BigDecimal freight = freight(buyer, weightLb.setScale(2, RoundingMode.HALF_UP));
    BigDecimal rate =
        buyer.get("exemption_certificate").isEmpty()
            ? new BigDecimal(buyer.get("tax_rate"))
            : BigDecimal.ZERO;
    // The demo dealer's settings say that freight is taxed.
    return new Sums(subtotal, freight, cents(subtotal.add(freight).multiply(rate)));
  }

  private BigDecimal each(CSVRecord buyer, String item, int quantity) {
    BigDecimal list =
        new BigDecimal(
            rows("prices.csv").stream()
                .filter(row -> row.get("item").equals(item))
                .filter(row -> Integer.parseInt(row.get("min_quantity")) <= quantity)
                .reduce((one, other) -> other)
                .orElseThrow()
                .get("unit_price"));
    BigDecimal off =
        cents(list.multiply(BigDecimal.ONE.subtract(new BigDecimal(buyer.get("discount")))));
    return rows("contract-prices.csv").stream()
        .filter(row -> row.get("customer").equals(buyer.get("id")) && row.get("item").equals(item))
        .filter(row -> row.get("from").startsWith("2026"))
        .map(row -> new BigDecimal(row.get("unit_price")))
        .filter(agreed -> agreed.compareTo(off) < 0)
        .findFirst()
        .orElse(off);
  }

  private BigDecimal freight(CSVRecord buyer, BigDecimal weightLb) {
    if (!buyer.get("freight_terms").equals("weight table")) {
      return cents(BigDecimal.ZERO);
    }
    return rows("freight.csv").stream()
        .filter(band -> weightLb.compareTo(new BigDecimal(band.get("up_to_lb"))) <= 0)
        .map(band -> new BigDecimal(band.get("charge")))
        .findFirst()
        .orElseThrow();
  }

  /**
   * The margin, to six decimals and never rounded up.
   *
   * @param rate what one of a cost in another currency is worth
   */
  BigDecimal margin(String customer, Map<String, Integer> quantities, BigDecimal rate) {
    BigDecimal cost = BigDecimal.ZERO;
    for (Map.Entry<String, Integer> line : quantities.entrySet()) {
      CSVRecord row = row("costs.csv", "item", line.getKey());
      BigDecimal each = new BigDecimal(row.get("unit_cost"));
      BigDecimal ours = row.get("currency").equals("USD") ? each : cents(each.multiply(rate));
      cost = cost.add(ours.multiply(BigDecimal.valueOf(line.getValue())));
    }
    BigDecimal net = sums(customer, quantities).subtotal();
    return net.subtract(cost).divide(net, 6, RoundingMode.FLOOR);
  }

  /** What lies in stock at the beginning. */
  int onHand(String item) {
    return Integer.parseInt(row("items.csv", "number", item).get("on_hand"));
  }

  boolean isGoods(String item) {
    return !row("items.csv", "number", item).get("kind").equals("service");
  }

  int pack(String item) {
    return Integer.parseInt(row("items.csv", "number", item).get("pack"));
  }

  private CSVRecord row(String file, String column, String value) {
    return rows(file).stream()
        .filter(row -> row.get(column).equals(value))
        .findFirst()
        .orElseThrow();
  }

  private final Map<String, List<CSVRecord>> read = new HashMap<>();

  private List<CSVRecord> rows(String file) {
    return read.computeIfAbsent(file, this::readAll);
  }

  private List<CSVRecord> readAll(String file) {
    CSVFormat form = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader text = Files.newBufferedReader(catalogue.resolve(file))) {
      return form.parse(text).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static BigDecimal cents(BigDecimal sum) {
    return sum.setScale(2, RoundingMode.HALF_UP);
  }
}
