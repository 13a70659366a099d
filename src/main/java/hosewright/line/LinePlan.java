package hosewright.line;

import hosewright.thread.End;
import hosewright.thread.Verdict;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * Everything technical about a job, and its goods priced: the answer a planner gives.
 *
 * <p>The component names are the JSON names scripts rely on; a stored quote keeps this record
 * whole, so that its papers never change when the catalogue does.
 *
 * @param feasible every check passed or only warned
 * @param limitedBy the check that fails and by how much, in one sentence
 * @param instead what would do: a size, a source pressure, more lines
 * @param cautions sentences for the person who will stand beside the line
 * @param summary the job in one sentence of plain words
 * @param sizeIn nominal hose size, in
 * @param couplingSizeIn nominal size of the hose's couplings, in
 * @param hoseSeries the catalogue's hose line chosen
 * @param lines parallel lines laid, attack lines not counted
 * @param neededFt run length with slack, ft
 * @param laidFt sum of the coupled lengths of one line, ft
 * @param sections section lengths and counts of all lines together, attack lines not counted
 * @param run the parts in order from source to appliance (of one line)
 * @param joints the joints in order from source to appliance (of one line)
 * @param adapters items bridging ends, with counts over all lines
 * @param gaskets gaskets the plan buys
 * @param flowGpm flow asked for of all appliances together, gpm
 * @param needPsi pressure the appliance, or each of them, needs, psi
 * @param hydraulics how pressure goes along the line
 * @param checks each check with its value, limit and source
 * @param items what is bought
 * @param date the day the prices are of
 * @param unpriced parts to be sourced: item or the two ends wanted
 * @param total goods subtotal; freight and tax are the quote's
 * @param alternatives the best of every other hose size, cheapest first, and why each lost
 * @param searched how many plans were looked at
 * @param ownSections of the sections laid, those that the customer has already
 * @param spareSections spare sections bought, not laid
 * @param layout how the line divides, and what stands between its sections
 */
public record LinePlan(
    boolean feasible,
    Optional<String> limitedBy,
    List<String> instead,
    List<String> cautions,
    String summary,
    double sizeIn,
    double couplingSizeIn,
    String hoseSeries,
    int lines,
    double neededFt,
    double laidFt,
    List<SectionCount> sections,
    List<RunPart> run,
    List<Joint> joints,
    List<ItemCount> adapters,
    Gaskets gaskets,
    double flowGpm,
    double needPsi,
    LineHydraulicsResult hydraulics,
    List<Check> checks,
    List<PlanItem> items,
    LocalDate date,
    List<String> unpriced,
    Money total,
    List<Alternative> alternatives,
    Searched searched,
    List<SectionCount> ownSections,
    List<SectionCount> spareSections,
    Layout layout) {

  /** A plan stored before owned and spare sections, or the layout, were told has none. */
  public LinePlan {
    ownSections = ownSections == null ? List.of() : List.copyOf(ownSections);
    spareSections = spareSections == null ? List.of() : List.copyOf(spareSections);
    layout = layout == null ? Layout.ONE_LINE : layout;
  }

  /**
   * The best plan of another hose size.
   *
   * @param why why it lost, in one sentence
   */
  public record Alternative(
      double sizeIn,
      double couplingSizeIn,
      String hoseSeries,
      int lines,
      boolean feasible,
      Money total,
      double requiredSourcePsi,
      String why) {}

  /**
   * What a search looked at.
   *
   * @param topologies choices of hose, direction and number of lines
   * @param cutByPrice topologies that could not be cheaper than a plan already found
   * @param cutByPressure topologies through which not enough pressure could arrive
   * @param plans whole plans priced and checked
   */
  public record Searched(int topologies, int cutByPrice, int cutByPressure, int plans) {}

  /**
   * What a list of the parts of one line does not say by itself, in sentences with a full stop: how
   * often it is laid, and what stands where.
   */
  public List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    if (lines > 1) {
      remarks.add(
          lines
              + " lines like this one"
              + (layout.outlets() > 1 ? ", one from each outlet." : "."));
    }
    layout
        .attackLines()
        .ifPresent(
            attack ->
                remarks.add(
                    "Behind the wye, part "
                        + (attack.wyePlace() + 1)
                        + ", all parts are needed "
                        + attack.lines()
                        + " times: one of "
                        + attack.lines()
                        + " like attack lines is shown."));
    layout.sentences().forEach(sentence -> remarks.add(sentence + "."));
    return remarks;
  }

  /** Every section laid, attack lines included. */
  public int sectionsInAll() {
    return Stream.concat(
            sections.stream(),
            layout.attackLines().stream().flatMap(attack -> attack.sections().stream()))
        .mapToInt(SectionCount::count)
        .sum();
  }

  /** So many sections of one coupled length, ft. */
  public record SectionCount(double lengthFt, int count) {}

  /**
   * A part as the water meets it.
   *
   * @param item item number; empty for what the customer owns (the outlet, the appliance)
   * @param upstream the end facing the source; empty on the source itself
   * @param downstream the end facing the appliance; empty on the appliance itself
   * @param count like parts coupled one after another
   */
  public record RunPart(
      String item,
      String description,
      Optional<End> upstream,
      Optional<End> downstream,
      int count) {}

  /**
   * Two ends put together.
   *
   * @param upstreamPart what carries the upstream end, in words
   * @param count like joints that follow one another, as between like sections
   */
  public record Joint(
      End upstream,
      End downstream,
      String upstreamPart,
      String downstreamPart,
      int count,
      Verdict.Outcome verdict,
      Verdict.Seal seal,
      boolean removable,
      String reason,
      String source) {}

  public record ItemCount(String item, int count) {}

  /** Gaskets that come fitted (not charged again), are added, and are spares. */
  public record Gaskets(int fitted, int bought, int spare) {}

  /**
   * One thing bought.
   *
   * @param spare how many of the quantity are not laid: bought because a price break makes more
   *     cost less
   * @param unitPrice empty when no price is in force: to be sourced
   */
  public record PlanItem(
      String item,
      String description,
      int quantity,
      int spare,
      String unit,
      Optional<Money> unitPrice,
      Optional<Money> extended,
      double weightLb) {}
}
