package hosewright.door.shell.line;

import hosewright.catalogue.MoneyWords;
import hosewright.csv.PlainNumber;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Reasoning;
import hosewright.line.model.Reasoning.Considered;
import hosewright.line.model.Reasoning.Rival;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The reasoning behind a plan as a person reads it at a terminal. */
final class PlanReasoning {
  /** Rows shown of hose that would do but is dearer. */
  private static final int MOST_SHOWN = 10;

  private final LinePlan plan;
  private final Reasoning reasoning;
  private final Screen screen;
  private final Prose prose;

  private PlanReasoning(LinePlan plan, Reasoning reasoning, Screen screen) {
    this.plan = plan;
    this.reasoning = reasoning;
    this.screen = screen;
    this.prose = new Prose(screen);
  }

  static String of(LinePlan plan, Reasoning reasoning, Screen screen) {
    PlanReasoning writer = new PlanReasoning(plan, reasoning, screen);
    writer.because();
    writer.considered();
    writer.runnerUp();
    writer.others();
    return writer.prose.toString();
  }

  private void because() {
    if (!reasoning.because().isEmpty()) {
      prose.line("Why this line");
      reasoning.because().forEach(sentence -> prose.line("  ", "- " + sentence));
      prose.line("");
    }
  }

  private void considered() {
    Considered c = reasoning.considered();
    prose.line("What was weighed");
    int left = c.stock().leftOut().stream().mapToInt(Reasoning.Count::count).sum();
    prose.line(
        "  ",
        text("- The catalogue has %d hoses, coupled or by the foot. ", c.stock().hoses())
            + (left == 0
                ? "All may be laid here."
                : text("%d may not be laid here: %s.", left, counts(c.stock().leftOut()))));
    prose.line(
        "  ",
        text(
            "- The rest come in %d kinds (make, size, couplings, bought coupled or made up): laid"
                + " either way round, with what must stand in the line, %d ways to lay it.",
            c.stock().hoseLines(), c.ways().topologies()));
    prose.line("  ", "- " + fate(c));
    prose.line(
        "  ",
        text(
            "- %d whole plans were put together to the last gasket and priced; %s.",
            c.plans().wholePlans(), plans(c)));
    prose.line(
        "  ",
        "- A way is cut only where the least it can cost, or lose, is already too much: nothing"
            + " cheaper that works was passed over.");
    prose.line("");
  }

  private static String fate(Considered c) {
    int searched =
        c.ways().topologies()
            - c.ways().unjoined()
            - c.ways().cutByPrice()
            - c.ways().cutByPressure();
    List<String> fates =
        new ArrayList<>(List.of(text("Of these ways %d were searched through", searched)));
    add(fates, c.ways().cutByPrice(), "could not be cheaper than a plan already found");
    add(fates, c.ways().cutByPressure(), "must fail, too narrow or rated too low");
    add(fates, c.ways().unjoined(), "find no adapters that join them to both ends");
    return String.join("; ", fates) + ".";
  }

  private static String plans(Considered c) {
    int failed = c.plans().failed().stream().mapToInt(Reasoning.Count::count).sum();
    List<String> fates =
        new ArrayList<>(List.of(text("%d passed every check", c.plans().passed())));
    add(fates, failed, "failed (" + counts(c.plans().failed()) + ")");
    add(fates, c.plans().dearer(), "cost more than one already found and were left at that");
    return String.join(", ", fates);
  }

  private static void add(List<String> fates, int count, String fate) {
    if (count > 0) {
      fates.add(count + " " + fate);
    }
  }

  /** The make, and whether its sections are made up on the bench. */
  private static String make(Rival rival) {
    int madeUp = rival.laid().madeUpSections();
    String how =
        madeUp == 0
            ? ""
            : madeUp == rival.laid().sections()
                ? ", made up"
                : text(", %d of %d sections made up", madeUp, rival.laid().sections());
    return rival.laid().hoseSeries() + how;
  }

  private static String counts(List<Reasoning.Count> counts) {
    return counts.stream()
        .map(count -> count.count() + " " + count.what())
        .collect(Collectors.joining(", "));
  }

  private void runnerUp() {
    if (!plan.feasible()) {
      return;
    }
    prose.line("The runner-up");
    if (reasoning.runnerUp().isEmpty()) {
      prose.line("  ", "There is none: no other goods in the catalogue make a line that passes.");
    } else {
      Rival rival = reasoning.runnerUp().get();
      prose.line(
          "  ",
          text(
              "%s in hose, %s (%s), %s: %s.",
              PlainNumber.of(rival.laid().sizeIn()),
              make(rival),
              rival.laid().couplings(),
              MoneyWords.of(rival.total()),
              rival.why()));
    }
    prose.line("");
  }

  private void others() {
    if (reasoning.others().isEmpty()) {
      prose.line("No other hose line could be laid as asked.");
      return;
    }
    List<Rival> able = reasoning.others().stream().filter(r -> r.fails().isEmpty()).toList();
    able(able);
    unable(reasoning.others().stream().filter(r -> r.fails().isPresent()).toList());
  }

  private void able(List<Rival> able) {
    if (able.isEmpty()) {
      return;
    }
    prose.line("Other hose that would do, and why not");
    Table table = Table.of("hose, in", "series", "couplings", "total", "why not").numbers(0, 3);
    for (Rival rival : able.subList(0, Math.min(MOST_SHOWN, able.size()))) {
      table.row(
          PlainNumber.of(rival.laid().sizeIn()),
          make(rival) + (rival.laid().lines() > 1 ? ", " + rival.laid().lines() + " lines" : ""),
          rival.laid().couplings(),
          MoneyWords.of(rival.total()),
          rival.why());
    }
    prose.block(table.on(screen));
    if (able.size() > MOST_SHOWN) {
      prose.line(
          "  ",
          text(
              "and %d dearer, up to %s; --json names each.",
              able.size() - MOST_SHOWN, MoneyWords.of(able.get(able.size() - 1).total())));
      prose.line("");
    }
  }

  /** One row for each size and check: the hose of it that comes nearest. */
  private void unable(List<Rival> unable) {
    if (unable.isEmpty()) {
      return;
    }
    prose.line("Hose that would not do");
    Map<String, List<Rival>> alike = new LinkedHashMap<>();
    unable.stream()
        .sorted(Comparator.comparingDouble(rival -> rival.laid().sizeIn()))
        .forEach(
            rival ->
                alike
                    .computeIfAbsent(
                        rival.laid().sizeIn() + rival.fails().orElseThrow(), k -> new ArrayList<>())
                    .add(rival));
    Table table = Table.of("hose, in", "makes", "the nearest of them", "why not").numbers(0, 1);
    for (List<Rival> rivals : alike.values()) {
      Rival nearest =
          rivals.stream().min(Comparator.comparingDouble(Rival::requiredSourcePsi)).orElseThrow();
      table.row(
          PlainNumber.of(nearest.laid().sizeIn()), rivals.size(), make(nearest), nearest.why());
    }
    prose.block(table.on(screen));
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
