package hosewright.hydraulics;

import java.util.List;
import java.util.Locale;

/**
 * The flow a source brings through a line.
 *
 * @param limit what ends the flow where it does
 * @param flowGpm gpm; 0 when nothing flows
 * @param losses by kind at that flow
 * @param elements the line, source to appliance
 * @param supply the source
 */
public record Arrival(
    Limit limit,
    double flowGpm,
    Pressures pressures,
    Losses losses,
    List<LineElement> elements,
    Supply supply) {

  /** What ends the flow. */
  public enum Limit {
    /** The source's pressure is used up by the line and the appliance. */
    PRESSURE,
    /** The source is known, or able, only up to this flow, and the line would take more. */
    SOURCE,
    /** The source cannot lift the water to the appliance: nothing flows. */
    NO_FLOW
  }

  /** Whether any water arrives. */
  public boolean flows() {
    return limit != Limit.NO_FLOW;
  }

  /** Pressure by station, flowing and shut. */
  public List<Station> profile() {
    return LineHydraulics.profile(elements, flowGpm, pressures.sourcePsi(), supply.closedPsi());
  }

  /** In one sentence for the user, what the flow is limited by. */
  public String limitedBy() {
    return switch (limit) {
      case NO_FLOW ->
          text(
              "no water arrives: the source gives %.1f psi and the rise and standing water take"
                  + " %.1f psi",
              pressures.sourcePsi() + losses.boostPsi(),
              losses.elevationPsi() + pressures.needPsi());
      case SOURCE -> text("the source: it is known only up to %.0f gpm", flowGpm);
      case PRESSURE -> {
        if (supply instanceof Hydrant hydrant
            && hydrant.mainPsi(flowGpm) < Hydrant.LEAST_MAIN_PSI) {
          yield text(
              "the main: this flow would draw it down to %.1f psi, and no main is drawn below %.0f"
                  + " psi, reached at %.0f gpm",
              hydrant.mainPsi(flowGpm),
              Hydrant.LEAST_MAIN_PSI,
              hydrant.flowGpmAt(Math.min(Hydrant.LEAST_MAIN_PSI, hydrant.staticPsi())));
        }
        yield greatestLoss();
      }
    };
  }

  private String greatestLoss() {
    String name = "the appliance itself";
    double greatestPsi = pressures.deliveredPsi();
    if (losses.elevationPsi() > greatestPsi) {
      name = "the rise";
      greatestPsi = losses.elevationPsi();
    }
    for (LineElement element : elements) {
      double psi = element.lossPsi(flowGpm);
      if (psi > greatestPsi) {
        name = element.name();
        greatestPsi = psi;
      }
    }
    return text(
        "%s: it takes %.1f of %.1f psi",
        name, greatestPsi, pressures.sourcePsi() + losses.boostPsi());
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  /**
   * Pressures at the flow that arrives.
   *
   * @param deliveredPsi pressure at the appliance at that flow, psi
   * @param needPsi what the appliance needs at that flow, psi: less than delivered only where the
   *     source ends the flow, more only where nothing flows
   * @param sourcePsi what the source gives at that flow, psi
   */
  public record Pressures(double deliveredPsi, double needPsi, double sourcePsi) {}
}
