package hosewright.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class PlannerTest {
  @Test
  void scratch() {
    long t = System.nanoTime();
    LinePlan plan =
        DemoCatalogue.plan(
            "from",
            "2.5 NH male hydrant",
            "to",
            "1.5 NH nozzle",
            "length",
            "400 ft",
            "flow",
            "150 gpm",
            "need",
            "50 psi",
            "source-pressure",
            "150 psi",
            "section",
            "50 ft",
            "size",
            "1.75 in",
            "friction-coefficient",
            "15.5");
    System.out.println(
        plan.feasible()
            + " "
            + plan.limitedBy()
            + " "
            + plan.instead()
            + "\n"
            + plan.run()
            + "\n"
            + plan.hydraulics().frictionLossPsi()
            + " "
            + plan.hydraulics().adapterLossPsi()
            + " "
            + plan.total()
            + " "
            + plan.searched());
    System.out.println((System.nanoTime() - t) / 1e6);
    for (int i = 0; i < 3; i++) {
      t = System.nanoTime();
      plan =
          DemoCatalogue.plan(
              "from",
              "2.5 NH male hydrant",
              "to",
              "1.5 NH nozzle",
              "length",
              "400 ft",
              "flow",
              "150 gpm",
              "need",
              "50 psi",
              "source-pressure",
              "150 psi");
      System.out.println(
          plan.feasible()
              + " "
              + plan.limitedBy()
              + " "
              + plan.instead()
              + "\n"
              + plan.run()
              + "\n"
              + plan.items()
              + plan.hydraulics().frictionLossPsi()
              + " "
              + plan.hydraulics().adapterLossPsi()
              + " "
              + plan.total()
              + " "
              + plan.searched());
      plan.alternatives().forEach(System.out::println);
      System.out.println((System.nanoTime() - t) / 1e6);
    }
    assertThat(plan).isNotNull();
  }
}
