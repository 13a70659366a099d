package hosewright.paper.quote;

import hosewright.line.model.Check;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.SectionCount;
import hosewright.paper.drawing.JointWords;
import hosewright.paper.drawing.LaidLine;
import hosewright.paper.drawing.LaidLine.Shape;
import hosewright.paper.drawing.LaidLine.Step;
import hosewright.paper.page.PrintedMoney;
import hosewright.quote.Departures;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.apache.commons.lang3.StringUtils;

/** A quote told to its buyer in plain words: what comes, what it does, what to check on site. */
public final class PlainSummary {
  private PlainSummary() {}

  /** A heading and its sentences. */
  public record Part(String heading, List<String> sentences) {
    public Part {
      sentences = List.copyOf(sentences);
    }
  }

  /** The parts in the order they are read. */
  public static List<Part> of(Quote quote) {
    return List.of(
        new Part("What you get", goods(quote)),
        new Part("What it does", ofEach(quote, PlainSummary::work)),
        new Part("What you must check on site", ofEach(quote, PlainSummary::onSite)),
        new Part("Cautions", PrintedTerms.cautions(quote)),
        new Part("What it costs", cost(quote)));
  }

  /** The summary as text for a terminal or a mail. */
  public static String text(Quote quote) {
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            Locale.ROOT,
            "%s%nQuote %s, revision %d%n",
            quote.basis().title(),
            quote.number(),
            quote.revision()));
    for (Part part : of(quote)) {
      text.append(String.format("%n%s%n", part.heading()));
      part.sentences().forEach(sentence -> text.append(String.format("- %s%n", sentence)));
    }
    return text.toString();
  }

  /** What is to be said of every group, each by its title where there are several. */
  private static List<String> ofEach(Quote quote, Function<LinePlan, List<String>> sentences) {
    return quote.groups().stream()
        .flatMap(
            group ->
                sentences.apply(group.plan()).stream()
                    .map(sentence -> GroupWords.before(quote, group) + sentence))
        .toList();
  }

  private static List<String> goods(Quote quote) {
    List<String> sentences = new ArrayList<>();
    for (Group group : quote.groups()) {
      if (quote.groups().size() > 1) {
        sentences.add(
            group.heading().words()
                + (group.optional() ? ", not in the total" : "")
                + ", for "
                + PrintedMoney.words(quote.subtotal(group))
                + ":");
      }
      sentences.addAll(goods(group.plan()));
    }
    sentences.addAll(Departures.of(quote));
    sentences.add("The quote lists every item with its price.");
    quote
        .stillToSource()
        .forEach(
            missing -> sentences.add("Not included, still to be found: " + missing.words() + "."));
    return sentences;
  }

  private static List<String> goods(LinePlan plan) {
    List<String> sentences = new ArrayList<>();
    for (Leg leg : plan.layout().hoseLegs()) {
      Leg.Hose hose = leg.hose().orElseThrow();
      boolean branches = plan.layout().branchLeg().filter(leg::equals).isPresent();
      for (SectionCount section : leg.sectionCounts()) {
        sentences.add(
            sections(section, hose)
                + (branches ? " for the " + leg.lines() + " attack lines." : "."));
      }
    }
    plan.layout().stations().forEach(sentence -> sentences.add(sentence + "."));
    int abreast = plan.layout().abreast();
    if (abreast > 1) {
      sentences.add("They make " + abreast + " lines laid side by side.");
    }
    if (plan.layout().legs().isEmpty()) {
      plan.items()
          .forEach(item -> sentences.add(item.quantity() + " x " + item.description() + "."));
    }
    for (Step step : LaidLine.of(plan)) {
      boolean fitting = step.shape() == Shape.REDUCER || step.shape() == Shape.FITTING;
      if (fitting && !step.again()) {
        sentences.add(step.part().count() + " x " + step.part().description() + ".");
      }
    }
    if (!plan.joints().isEmpty()) {
      sentences.add(JointWords.gaskets(plan.bill().gaskets()));
    }
    return sentences;
  }

  private static String sections(SectionCount section, Leg.Hose hose) {
    return count(section.count(), "section")
        + " of "
        + number(hose.sizeIn())
        + " in hose, "
        + number(section.lengthFt())
        + (section.count() == 1 ? " ft, with " : " ft each, with ")
        + number(hose.couplingSizeIn())
        + " in couplings";
  }

  private static List<String> work(LinePlan plan) {
    List<String> sentences = new ArrayList<>();
    sentences.add(plan.summary());
    if (plan.layout().legs().isEmpty()) {
      return sentences;
    }
    if (!plan.hydraulics().calculated()) {
      sentences.add("Pressures are " + plan.hydraulics().frictionBasis() + ".");
      return sentences;
    }
    Hydraulics result = plan.hydraulics();
    String arrives =
        number(plan.flowGpm())
            + " gallons a minute arrive with "
            + number(result.deliveredPsi())
            + " psi; "
            + number(plan.needPsi())
            + " psi is needed.";
    sentences.add(
        result.sourcePsi().isPresent()
            ? arrives
            : "For "
                + number(plan.flowGpm())
                + " gallons a minute the source must give "
                + number(result.requiredSourcePsi())
                + " psi.");
    result
        .reactionLbf()
        .ifPresent(
            lbf ->
                sentences.add(
                    (plan.layout().branchLeg().isPresent() ? "Each nozzle" : "The nozzle")
                        + " pushes back with about "
                        + number(lbf)
                        + " lbf."));
    plan.instead().forEach(other -> sentences.add("Instead: " + other));
    return sentences;
  }

  private static List<String> onSite(LinePlan plan) {
    List<String> sentences = new ArrayList<>();
    if (!plan.joints().isEmpty()) {
      sentences.add(
          "That the source ends in "
              + plan.joints().get(0).upstream().end()
              + ": measure it, do not go by its name.");
      sentences.add(
          "That the appliance ends in "
              + plan.joints().get(plan.joints().size() - 1).downstream().end()
              + ".");
    }
    plan.hydraulics()
        .sourcePsi()
        .ifPresent(
            psi ->
                sentences.add(
                    "That the source really gives "
                        + number(psi)
                        + " psi while "
                        + number(plan.flowGpm())
                        + " gpm flows."));
    plan.checks().stream()
        .filter(check -> check.outcome() == Check.Outcome.WARN)
        .forEach(
            check ->
                sentences.add(
                    StringUtils.capitalize(check.name())
                        + ": "
                        + PrintedTerms.ended(check.note())));
    return sentences;
  }

  private static List<String> cost(Quote quote) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "Goods "
            + PrintedMoney.words(quote.totals().subtotal())
            + ", freight "
            + quote.totals().knownFreight().map(PrintedMoney::words).orElse("to be quoted")
            + ", tax "
            + PrintedMoney.words(quote.totals().tax())
            + ": in all "
            + PrintedMoney.words(quote.total())
            + quote.besideTotal()
            + ".");
    sentences.add("The prices hold until " + quote.validity().validUntil() + ".");
    PrintedTerms.offers(quote).forEach(offer -> sentences.add("Not in that: " + offer + "."));
    sentences.addAll(quote.offer().amendments().notes());
    sentences.addAll(quote.offer().amendments().terms());
    return sentences;
  }

  private static String count(int count, String noun) {
    return count == 1 ? "One " + noun : count + " " + noun + "s";
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%,.2f", value).replaceAll("\\.?0+$", "");
  }
}
