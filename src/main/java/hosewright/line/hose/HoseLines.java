package hosewright.line.hose;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.HoseFacts;
import hosewright.catalogue.HoseType;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import hosewright.hydraulics.law.WaveSpeeds;
import hosewright.job.Job;
import hosewright.job.Wishes;
import hosewright.line.assembly.FittedGaskets;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.SectionOption;
import hosewright.line.goods.Eligibility;
import hosewright.thread.End;
import hosewright.thread.Gender;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The hose lines a job may be laid with: coupled hose grouped by make, and hose made up from bulk.
 */
public final class HoseLines {
  private final Job job;
  private final Catalogue catalogue;
  private final Eligibility eligibility;
  private final AlikeSections alike;

  public HoseLines(Job job, Catalogue catalogue, NetPrice prices) {
    this.job = job;
    this.catalogue = catalogue;
    this.eligibility = new Eligibility(job, prices);
    this.alike = new AlikeSections(job, prices);
  }

  /**
   * Every eligible hose line that the buyer's wishes allow, in catalogue order, without sections
   * that others of their line make needless.
   */
  public List<HoseLine> all() {
    return lines(alike::without);
  }

  /** Every eligible hose line that the buyer's wishes allow, with every section. */
  public List<HoseLine> withEverySection() {
    return lines(line -> line);
  }

  private List<HoseLine> lines(UnaryOperator<HoseLine> kept) {
    List<HoseLine> bought = wished(coupled()).map(kept).toList();
    List<HoseLine> lines = new ArrayList<>(bought);
    wished(new MadeUpHose(catalogue, eligibility, job.wishes().sectionFt()).lines())
        .map(line -> withBought(line, bought))
        .forEach(lines::add);
    return job.conditions().owned().isEmpty() ? lines : new OwnedLines(job, catalogue).with(lines);
  }

  private Stream<HoseLine> wished(List<HoseLine> lines) {
    return lines.stream()
        .map(this::withSectionsWished)
        .filter(line -> !line.options().isEmpty())
        .filter(this::wished);
  }

  /** A line made up on the bench, and sections of the same make that are bought coupled. */
  private static HoseLine withBought(HoseLine madeUp, List<HoseLine> bought) {
    return bought.stream()
        .filter(line -> goesWith(line, madeUp))
        .findFirst()
        .map(
            line ->
                madeUp.withOptions(
                    Stream.concat(line.options().stream(), madeUp.options().stream()).toList()))
        .orElse(madeUp);
  }

  /** Of the same make and couplings. */
  private static boolean goesWith(HoseLine bought, HoseLine madeUp) {
    return bought.series().equals(madeUp.series())
        && bought.type() == madeUp.type()
        && bought.sizeIn() == madeUp.sizeIn()
        && bought.bore().boreIn() == madeUp.bore().boreIn()
        && bought.inlet().equals(madeUp.inlet())
        && bought.outlet().equals(madeUp.outlet())
        && bought.bore().frictionCoefficient().equals(madeUp.bore().frictionCoefficient())
        && bought.bore().waves().equals(madeUp.bore().waves())
        && bought.finish().hoseMarkedTo().equals(madeUp.finish().hoseMarkedTo())
        && bought.finish().gaskets().equals(madeUp.finish().gaskets());
  }

  /** Why hose of the catalogue is left out before any line is weighed, and how much of it. */
  public Map<String, Integer> leftOut() {
    Map<String, Integer> leftOut = new LinkedHashMap<>();
    Stream.of(ItemKind.HOSE, ItemKind.BULK_HOSE)
        .flatMap(kind -> catalogue.ofKind(kind).stream())
        .flatMap(item -> whyNot(item).stream())
        .forEach(why -> leftOut.merge(why, 1, Integer::sum));
    int needless = 0;
    for (HoseLine line : coupled()) {
      HoseLine left = withSectionsWished(line);
      needless += wished(line) ? left.options().size() - alike.without(left).options().size() : 0;
    }
    if (needless > 0) {
      leftOut.put("no better than another section of its make and length", needless);
    }
    return leftOut;
  }

  private Optional<String> whyNot(Item item) {
    Wishes wishes = job.wishes();
    HoseFacts hose = item.hose().orElseThrow();
    List<End> ends = item.ends();
    boolean forAttack =
        job.attack()
            .filter(attack -> wishes.ofSizes(attack.hoseSizesIn()).allows(hose.sizeIn()))
            .isPresent();
    if (!wishes.allows(hose.sizeIn()) && !forAttack) {
      return Optional.of("not of the size asked for");
    }
    if (ends.size() == 2
        && !(agrees(wishes.couplingSizeIn(), inlet(ends).sizeIn())
            && wishes.hoseThread().map(inlet(ends).family()::equals).orElse(true))) {
      return Optional.of("not with the couplings asked for");
    }
    return eligibility.whyNotHose(item).or(() -> whyNotSection(item, hose));
  }

  private Optional<String> whyNotSection(Item item, HoseFacts hose) {
    if (hose.lengthFt().isEmpty()) {
      return Optional.empty();
    }
    if (!agrees(job.wishes().sectionFt(), hose.lengthFt().getAsDouble())) {
      return Optional.of("not of the section length asked for");
    }
    return item.weightLb() > job.conditions().heaviestSectionLb().orElse(Double.POSITIVE_INFINITY)
        ? Optional.of("too heavy a section for the crew")
        : Optional.empty();
  }

  private List<HoseLine> coupled() {
    Map<Make, List<Item>> makes = new LinkedHashMap<>();
    for (Item item : catalogue.ofKind(ItemKind.HOSE)) {
      if (item.ends().size() == 2 && eligibility.hose(item)) {
        HoseFacts hose = item.hose().orElseThrow();
        Make make =
            new Make(
                hose.series(),
                hose.sizeIn(),
                inlet(item.ends()),
                outlet(item.ends()),
                hose.frictionCoefficient(),
                hose.type());
        makes.computeIfAbsent(make, m -> new ArrayList<>()).add(item);
      }
    }
    List<HoseLine> lines = new ArrayList<>();
    makes.forEach((make, items) -> lines.add(coupledLine(make, items)));
    return lines;
  }

  private static HoseLine coupledLine(Make make, List<Item> items) {
    Item any = items.get(0);
    HoseFacts hose = any.hose().orElseThrow();
    List<SectionOption> options =
        items.stream()
            .map(
                item ->
                    SectionOption.bought(
                        item,
                        item.hose().orElseThrow().lengthFt().orElseThrow(),
                        item.description(),
                        Map.of(item, 1),
                        item.weightLb(),
                        item.rating()))
            .toList();
    return new HoseLine(
        make.series(),
        make.sizeIn(),
        make.inlet(),
        make.outlet(),
        new HoseLine.Bore(
            make.frictionCoefficient(),
            hose.boreOrNominalIn(),
            WaveSpeeds.of(hose.waveSpeedFtPerS(), hose.type().word())),
        options,
        new HoseLine.Finish(
            any.markedTo(),
            items.stream().allMatch(Item::comesWithGaskets)
                ? FittedGaskets.atBoth(make.inlet(), make.outlet())
                : FittedGaskets.NONE,
            false));
  }

  /** The female end of a gendered pair faces a male source; a sexless pair has no preference. */
  public static End inlet(List<End> ends) {
    return ends.stream()
        .filter(end -> end.gender() == Gender.FEMALE || end.gender() == Gender.SOCKET)
        .findFirst()
        .orElse(ends.get(0));
  }

  static End outlet(List<End> ends) {
    return inlet(ends).equals(ends.get(0)) ? ends.get(1) : ends.get(0);
  }

  private HoseLine withSectionsWished(HoseLine line) {
    OptionalDouble sectionFt = job.wishes().sectionFt();
    double heaviestLb = job.conditions().heaviestSectionLb().orElse(Double.POSITIVE_INFINITY);
    return line.withOptions(
        line.options().stream()
            .filter(option -> agrees(sectionFt, option.lengthFt()))
            .filter(option -> option.weightLb() <= heaviestLb)
            .toList());
  }

  private boolean wished(HoseLine line) {
    Wishes wishes = job.wishes();
    Optional<String> thread = wishes.hoseThread();
    return wishes.allows(line.sizeIn())
        && agrees(wishes.couplingSizeIn(), line.couplingSizeIn())
        && (thread.isEmpty() || thread.get().equals(line.inlet().family()));
  }

  private static boolean agrees(OptionalDouble wish, double value) {
    return wish.isEmpty() || wish.getAsDouble() == value;
  }

  private record Make(
      String series,
      double sizeIn,
      End inlet,
      End outlet,
      OptionalDouble frictionCoefficient,
      HoseType type) {}
}
