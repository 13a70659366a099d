package hosewright.measure;

/** How quantities are shown: US customary or SI. Every input is in the US unit its name states. */
public enum UnitSystem {
  US,
  SI;

  /** "400 ft" or "121.9 m". */
  public String length(double lengthFt) {
    return show(lengthFt, TradeUnit.FOOT, TradeUnit.METRE, 1);
  }

  /** "2.5 in" or "63.5 mm". */
  public String diameter(double diameterIn) {
    return show(diameterIn, TradeUnit.INCH, TradeUnit.MILLIMETRE, this == US ? 3 : 1);
  }

  /** "250 gpm" or "946.4 lpm". */
  public String flow(double flowGpm) {
    return show(flowGpm, TradeUnit.GALLON_PER_MINUTE, TradeUnit.LITRE_PER_MINUTE, 1);
  }

  /** "100 psi" or "6.89 bar". */
  public String pressure(double pressurePsi) {
    return show(pressurePsi, TradeUnit.POUND_PER_SQUARE_INCH, TradeUnit.BAR, this == US ? 1 : 2);
  }

  /** "60 °F" or "15.6 °C". */
  public String temperature(double temperatureF) {
    return show(temperatureF, TradeUnit.FAHRENHEIT, TradeUnit.CELSIUS, 1);
  }

  /** "16.3 ft/s" or "4.98 m/s". */
  public String speed(double speedFtPerS) {
    return show(
        speedFtPerS, TradeUnit.FOOT_PER_SECOND, TradeUnit.METRE_PER_SECOND, this == US ? 1 : 2);
  }

  /** "25.5 gal" or "96.5 L". */
  public String volume(double volumeGal) {
    return show(volumeGal, TradeUnit.GALLON, TradeUnit.LITRE, 1);
  }

  /** "38 lb" or "17.2 kg". */
  public String weight(double weightLb) {
    return show(weightLb, TradeUnit.POUND, TradeUnit.KILOGRAM, 1);
  }

  /** "75 lbf" or "334 N". */
  public String force(double forceLbf) {
    return show(forceLbf, TradeUnit.POUND_FORCE, TradeUnit.NEWTON, this == US ? 1 : 0);
  }

  private String show(double value, TradeUnit us, TradeUnit si, int decimals) {
    return this == US
        ? Shown.number(value, decimals) + " " + us.label()
        : Shown.number(Conversion.convert(value, us, si), decimals) + " " + si.label();
  }
}
