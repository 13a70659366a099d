package hosewright.hydraulics.law;

import hosewright.csv.ReferenceTable;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;

/**
 * How fast a pressure wave runs in filled hose: a low and a high estimate.
 *
 * <p>{@code a = 1/√(ρ (1/K + ΔA/(A Δp)))}, Korteweg's relation with the growth of the section in
 * place of the elasticity of a pipe wall. Hose swells far more than any pipe, so no figure of a
 * pipe is used for it.
 *
 * @param source where the two come from, in words
 */
public record WaveSpeeds(double lowFtPerS, double highFtPerS, String source) {
  /** Bulk modulus of water, 2.07 GPa in psi: common practice, no source. */
  private static final double BULK_MODULUS_PSI = 2.07e9 / 6_894.757;

  private static final Map<String, WaveSpeeds> BY_TYPE =
      ReferenceTable.rows("hydraulics/hose-swelling.csv", WaveSpeeds::row).stream()
          .collect(Collectors.toMap(Row::hoseType, Row::speeds));

  private record Row(String hoseType, WaveSpeeds speeds) {}

  /**
   * Of a hose.
   *
   * @param statedFtPerS what its maker states; the estimate of its type where that is not known
   * @param hoseType as catalogues write it: attack, supply, unknown
   */
  public static WaveSpeeds of(OptionalDouble statedFtPerS, String hoseType) {
    return statedFtPerS.isPresent()
        ? new WaveSpeeds(
            statedFtPerS.getAsDouble(), statedFtPerS.getAsDouble(), "the catalogue's hose")
        : Objects.requireNonNull(BY_TYPE.get(hoseType), hoseType);
  }

  /**
   * By how much the section grows.
   *
   * @param areaGrowth share that it grows by
   * @param psi pressure that makes it grow, psi
   */
  static double ftPerS(double areaGrowth, double psi) {
    double perPsi = 1 / BULK_MODULUS_PSI + areaGrowth / psi;
    double slugPerFt3 = Physical.WATER_LB_PER_FT3 / Physical.GRAVITY_FT_S2;
    return Math.sqrt(144 / (slugPerFt3 * perPsi));
  }

  private static Row row(CSVRecord row) {
    Function<String, Double> number = column -> Double.parseDouble(row.get(column));
    double psi = number.apply("at_psi");
    return new Row(
        row.get("hose_type"),
        new WaveSpeeds(
            ftPerS(number.apply("most_area_growth"), psi),
            ftPerS(number.apply("least_area_growth"), psi),
            row.get("source")));
  }
}
