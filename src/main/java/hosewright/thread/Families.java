package hosewright.thread;

import static hosewright.csv.ReferenceTable.list;
import static hosewright.csv.ReferenceTable.number;

import hosewright.csv.ReferenceTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;

/** The families known to the program, from {@code families.csv}. */
public final class Families {
  private static final List<Family> ALL =
      ReferenceTable.rows("threads/families.csv", Families::row);
  private static final Map<String, Family> BY_CODE =
      ALL.stream().collect(Collectors.toMap(Family::code, family -> family));
  private static final Map<String, Family> BY_NAME = byName();
  private static final Map<String, List<Double>> SIZES = sizes();
  private static final List<End> ENDS = listEnds();

  private Families() {}

  /** Every family, in the order of the table. */
  public static List<Family> all() {
    return ALL;
  }

  /**
   * The family of a code or another name, in any case; empty when none has it.
   *
   * @param codeOrAlias for example NH, nst, BSPP, cam-and-groove
   */
  public static Optional<Family> find(String codeOrAlias) {
    return Optional.ofNullable(BY_NAME.get(codeOrAlias.strip().toLowerCase(Locale.ROOT)));
  }

  /** The family of a code exactly as listed. */
  static Optional<Family> ofCode(String code) {
    return Optional.ofNullable(BY_CODE.get(code));
  }

  /** The nominal sizes a family is made in, inches, smallest first; empty for an unknown code. */
  public static List<Double> sizesIn(String code) {
    return SIZES.getOrDefault(code, List.of());
  }

  /** Every end that exists: family by size by half, a threaded female both fixed and swivel. */
  public static List<End> ends() {
    return ENDS;
  }

  private static Map<String, Family> byName() {
    Map<String, Family> names = new HashMap<>();
    for (Family family : ALL) {
      names.put(family.code().toLowerCase(Locale.ROOT), family);
      family.halves().aliases().keySet().forEach(alias -> names.put(alias, family));
    }
    return Map.copyOf(names);
  }

  private static Map<String, List<Double>> sizes() {
    Map<String, List<Double>> sizes = new HashMap<>();
    for (Family family : ALL) {
      String code = family.code();
      DoubleStream threads =
          ThreadTable.all().stream()
              .filter(r -> r.family().equals(code))
              .mapToDouble(ThreadDimensions::sizeIn);
      DoubleStream couplings =
          CouplingSize.all().stream()
              .filter(r -> r.family().equals(code))
              .mapToDouble(CouplingSize::sizeIn);
      sizes.put(code, DoubleStream.concat(threads, couplings).sorted().boxed().toList());
    }
    return Map.copyOf(sizes);
  }

  private static List<End> listEnds() {
    List<End> ends = new ArrayList<>();
    for (Family family : ALL) {
      for (double size : SIZES.get(family.code())) {
        for (Gender gender : family.halves().genders()) {
          ends.add(new End(size, family.code(), gender, false));
          if (family.threaded() && gender == Gender.FEMALE) {
            ends.add(new End(size, family.code(), gender, true));
          }
        }
      }
    }
    return List.copyOf(ends);
  }

  private static Family row(CSVRecord row) {
    return new Family(
        row.get("code"),
        row.get("name"),
        FamilyKind.of(row.get("kind")),
        row.get("group"),
        new Family.Halves(
            genders(list(row, "genders", ";").stream()),
            row.get("counterpart"),
            aliases(list(row, "aliases", ";"))),
        new Family.Sealing(row.get("seal"), row.get("gasketed_female").equals("yes")),
        new Family.Figures(
            number(row, "form_angle_deg"), row.get("figures").equals("yes"), row.get("source")));
  }

  private static List<Gender> genders(Stream<String> words) {
    return words.map(w -> Gender.valueOf(w.toUpperCase(Locale.ROOT))).toList();
  }

  /** A cell such as {@code MHT:male} names an alias that already says which half it is. */
  private static Map<String, Optional<Gender>> aliases(List<String> cells) {
    Map<String, Optional<Gender>> aliases = new HashMap<>();
    for (String cell : cells) {
      List<String> parts = Arrays.asList(cell.split(":", -1));
      aliases.put(
          parts.get(0).toLowerCase(Locale.ROOT),
          parts.size() > 1
              ? Optional.of(Gender.valueOf(parts.get(1).toUpperCase(Locale.ROOT)))
              : Optional.empty());
    }
    return aliases;
  }
}
