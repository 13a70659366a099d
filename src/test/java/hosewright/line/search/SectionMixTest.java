package hosewright.line.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import hosewright.job.Job;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.Topology;
import hosewright.line.goods.Availability;
import hosewright.line.goods.Eligibility;
import hosewright.line.goods.Gaskets;
import hosewright.line.goods.PriceFloor;
import hosewright.line.hose.HoseLines;
import hosewright.line.hose.LegLays;
import hosewright.line.plan.DemoCatalogue;
import java.util.List;
import java.util.Random;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.variables.IntVar;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** The choice of section lengths against a constraint solver (Choco). */
class SectionMixTest {
  private static final int MOST_CENTS = 10_000_000;

  @Test
  void cheapest_sections_cost_what_a_constraint_solver_finds_in_300_random_price_lists() {
    int bought = 0;
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      SmallShop shop = sections(random);
      Catalogue catalogue = shop.catalogue();
      NetPrice prices = catalogue.listPricesOn(SmallShop.DATE);
      int lengthFt = 20 + random.nextInt(900);
      Job job =
          DemoCatalogue.job(
              "from", "2.5 Storz hydrant",
              "to", "2.5 Storz appliance",
              "length", lengthFt + " ft",
              "slack", random.nextInt(10) + " %",
              "flow", "50 gpm",
              "need", "10 psi");
      HoseLine hose = new HoseLines(job, catalogue, prices).all().get(0);
      PriceFloor floor = new PriceFloor(prices, Availability.of(job), 6);
      Gaskets none = new Gaskets(catalogue, new Eligibility(job, prices), floor);
      LegShape leg = new LegShape(hose, false, 1, job.run().neededFt(), List.of(), List.of(), 1);
      Topology topology = new Topology(1, List.of(), List.of(leg));

      LegLays lays = new LayChoices(job, floor, none).of(topology).get(0);

      double expected = leastCents(catalogue, hose, job.run().neededFt()) / 100.0;
      assertThat(lays.leastCost())
          .as("seed %d: %.1f ft of %s", seed, job.run().neededFt(), hose.options())
          .isCloseTo(expected, within(1e-6));
      bought += lays.cheapest().value().sections();
    }
    assertThat(bought).isGreaterThan(1_000);
  }

  private static SmallShop sections(Random random) {
    SmallShop shop = new SmallShop();
    List<Integer> lengthsFt = List.of(10, 15, 25, 30, 50, 75, 100);
    int first = random.nextInt(lengthsFt.size() - 3);
    for (int lengthFt : lengthsFt.subList(first, first + 1 + random.nextInt(4))) {
      String number = "H" + lengthFt;
      int cents = lengthFt * (80 + random.nextInt(60)) + random.nextInt(4_000);
      shop.part(number, ItemKind.HOSE, "2.5 Storz", "2.5 Storz")
          .hose(2.5, lengthFt, "Series")
          .at(cents);
      int quantity = 1;
      int breaks = random.nextInt(3);
      for (int i = 0; i < breaks; i++) {
        quantity += 1 + random.nextInt(9);
        cents = cents * (55 + random.nextInt(43)) / 100;
        shop.price(number, quantity, cents);
      }
    }
    return shop;
  }

  /**
   * Least cost in cents of sections that cover a length. How many are bought of each length is a
   * variable; what they cost is looked up in a table of every quantity.
   */
  private static int leastCents(Catalogue catalogue, HoseLine hose, double neededFt) {
    Model model = new Model("section mix");
    int options = hose.options().size();
    IntVar[] bought = new IntVar[options];
    IntVar[] cents = new IntVar[options];
    int[] lengthsFt = new int[options];
    for (int i = 0; i < options; i++) {
      lengthsFt[i] = (int) hose.options().get(i).lengthFt();
      int[] table = table(catalogue, "H" + lengthsFt[i], (int) (neededFt / lengthsFt[i]) + 30);
      bought[i] = model.intVar("bought " + i, 0, table.length - 1);
      cents[i] = model.intVar("cents " + i, 0, MOST_CENTS, true);
      model.element(cents[i], table, bought[i]).post();
    }
    model.scalar(bought, lengthsFt, ">=", (int) Math.ceil(neededFt - 1e-9)).post();
    IntVar total = model.intVar("total", 0, MOST_CENTS, true);
    model.sum(cents, "=", total).post();
    Solution best = model.getSolver().findOptimalSolution(total, Model.MINIMIZE);
    return best.getIntVal(total);
  }

  private static int[] table(Catalogue catalogue, String number, int most) {
    int[] cents = new int[most + 1];
    for (int quantity = 1; quantity <= most; quantity++) {
      Money each = catalogue.listPrice(number, quantity, SmallShop.DATE).orElseThrow();
      cents[quantity] = (int) each.getAmountMinorLong() * quantity;
    }
    return cents;
  }
}
