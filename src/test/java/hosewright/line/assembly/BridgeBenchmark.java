package hosewright.line.assembly;

import hosewright.catalogue.Build;
import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Form;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.PriceRow;
import hosewright.catalogue.Rating;
import hosewright.catalogue.Selling;
import hosewright.catalogue.Stocking;
import hosewright.catalogue.UnitOfSale;
import hosewright.catalogue.WaterFacts;
import hosewright.line.bridge.StockBridges;
import hosewright.thread.End;
import hosewright.thread.Families;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long ten thousand bridges take, as {@code joint bridge} finds them, in an invented catalogue
 * of 5,000 adapters.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
// One shot runs for minutes: what the compiler needs to warm up is lost in it.
@Warmup(iterations = 0)
@Measurement(iterations = 2)
@Fork(1)
public class BridgeBenchmark {
  private static final int BRIDGES = 10_000;
  private static final int ADAPTERS = 5_000;
  private static final LocalDate DAY = LocalDate.of(2026, 11, 2);

  /** Families that a catalogue so large would carry adapters for. */
  private static final Set<String> FAMILIES =
      Set.of("NH", "NPSH", "NPT", "GHT", "G", "R", "Storz", "cam", "PCT", "NYFT", "instantaneous");

  private final End[] from = new End[BRIDGES];
  private final End[] to = new End[BRIDGES];
  private StockBridges stock;

  /** Makes the catalogue and draws what is asked of it. */
  @Setup
  public void draw() {
    List<End> ends =
        Families.ends().stream().filter(end -> FAMILIES.contains(end.family())).toList();
    Random random = new Random(1960);
    List<Item> items = new ArrayList<>();
    List<PriceRow> prices = new ArrayList<>();
    for (int i = 0; i < ADAPTERS; i++) {
      String number = "A-" + i;
      items.add(adapter(number, List.of(any(ends, random), any(ends, random))));
      Money price = Money.ofMinor(CurrencyUnit.USD, 500 + random.nextInt(20_000));
      prices.add(new PriceRow(number, DAY, Optional.empty(), 1, price));
    }
    Catalogue catalogue = new Catalogue(items, prices, List.of(), List.of());
    stock = new StockBridges(catalogue, catalogue.listPricesOn(DAY), CurrencyUnit.USD);
    for (int i = 0; i < BRIDGES; i++) {
      from[i] = any(ends, random);
      to[i] = any(ends, random);
    }
  }

  private static End any(List<End> ends, Random random) {
    return ends.get(random.nextInt(ends.size()));
  }

  private static Item adapter(String number, List<End> ends) {
    return new Item(
        number,
        ends.get(0) + " x " + ends.get(1),
        Form.of(ItemKind.ADAPTER, ends),
        Optional.empty(),
        new Build("brass", 1, Set.of("water"), Rating.NONE, false, "", true),
        WaterFacts.NONE,
        new Selling(UnitOfSale.EACH, false, new Stocking("S", 1, 1, 1)));
  }

  /** Gives how many adapters were needed in all, so that no bridge can be left out. */
  @Benchmark
  public int ten_thousand_bridges() {
    int adapters = 0;
    for (int i = 0; i < BRIDGES; i++) {
      for (StockBridges.Way way : stock.cheapest(from[i], to[i], 1)) {
        adapters += way.links().size();
      }
    }
    return adapters;
  }
}
