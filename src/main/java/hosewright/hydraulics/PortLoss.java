package hosewright.hydraulics;

/**
 * What divides the water, as one leg behind it meets it: each of its outlets is taken to pass as
 * much.
 *
 * @param whole what it takes of the flow of all its outlets together
 * @param outlets how many it has
 */
public record PortLoss(LineElement whole, int outlets) implements LineElement {

  @Override
  public String name() {
    return whole.name();
  }

  @Override
  public Kind kind() {
    return whole.kind();
  }

  @Override
  public double lossPsi(double flowGpm) {
    return whole.lossPsi(flowGpm * outlets);
  }
}
