package hosewright.hydraulics;

/**
 * An appliance of which no maker's figure is known: what its waterway takes, and from the flow on
 * that a loss is taught for, no less than that.
 *
 * <p>A taught loss is a round figure for appliances of full size. Water forced through a narrow one
 * takes more, so the larger of the two is counted.
 *
 * @param waterway what the change of bore and the body take
 * @param taught the loss taught for such an appliance
 */
public record TaughtLoss(Fitting waterway, ApplianceLoss taught) implements LineElement {

  @Override
  public String name() {
    return waterway.name();
  }

  @Override
  public Kind kind() {
    return Kind.APPLIANCE;
  }

  /**
   * A fitting where its waterway decides: that follows the square of the flow, a figure does not.
   */
  @Override
  public Kind kind(double flowGpm) {
    return waterway.lossPsi(flowGpm) >= taught.lossPsi(flowGpm) ? Kind.FITTING : Kind.APPLIANCE;
  }

  @Override
  public double lossPsi(double flowGpm) {
    return Math.max(waterway.lossPsi(flowGpm), taught.lossPsi(flowGpm));
  }
}
