package hosewright.hydraulics.network;

import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.LineHydraulics;
import hosewright.hydraulics.Losses;
import hosewright.hydraulics.RelayPump;
import hosewright.hydraulics.Station;
import hosewright.hydraulics.law.Given;
import hosewright.problem.BadInputException;
import java.util.List;

/**
 * What lies between two nodes: hose and fittings one after another, once or as like lines. Water
 * runs from its beginning to its end and never back.
 *
 * @param name what the user calls it; no two links of a network have one name
 * @param begins the node it begins at
 * @param ends the node it ends at
 * @param elements one line of it, from its beginning; none where it only joins two nodes
 * @param lines like lines side by side that meet again at its end, 1 or more
 * @param copies like links that each have an end of their own, 1 or more
 */
public record Link(
    String name, String begins, String ends, List<LineElement> elements, int lines, int copies) {

  public Link {
    elements = List.copyOf(elements);
    Given.between("lines of " + name, lines, 1, 100, "");
    Given.between("copies of " + name, copies, 1, 100, "");
    for (LineElement element : elements) {
      if (element instanceof RelayPump) {
        throw new BadInputException(
            name, element.name(), "a pump stands at a node, where its intake can be looked at");
      }
    }
  }

  /** One line. */
  public Link(String name, String begins, String ends, List<LineElement> elements) {
    this(name, begins, ends, elements, 1, 1);
  }

  /** Height gained from its beginning to its end, ft. */
  public double riseFt() {
    return elements.stream().mapToDouble(LineElement::riseFt).sum();
  }

  /** Losses of one line by kind, psi. */
  public Losses losses(double oneLineGpm) {
    return LineHydraulics.losses(elements, oneLineGpm);
  }

  /** Pressure at its beginning less pressure at its end, psi. */
  public double takesPsi(double oneLineGpm) {
    return LineHydraulics.lossPsi(elements, oneLineGpm);
  }

  /** Pressure and height of one line at its beginning and after every section and part. */
  public List<Station> profile(double oneLineGpm, double flowingPsi, double closedPsi) {
    return LineHydraulics.profile(elements, oneLineGpm, flowingPsi, closedPsi);
  }
}
