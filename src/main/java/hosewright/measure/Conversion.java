package hosewright.measure;

import java.util.EnumMap;
import java.util.Map;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

/**
 * Converts between trade units by Indriya's unit definitions. The class is loaded at the first
 * conversion, so that a command which reads no quantity does not pay for the unit library.
 */
final class Conversion {
  // Standard gravity and the density of water at 4 °C define pound-force and feet of water.
  private static final Unit<?> STANDARD_GRAVITY =
      Units.METRE_PER_SQUARE_SECOND.multiply(980_665).divide(100_000);
  private static final Unit<?> WATER = Units.KILOGRAM.multiply(1000).divide(Units.CUBIC_METRE);

  private static final Map<TradeUnit, Unit<?>> DEFINITIONS = definitions();

  private Conversion() {}

  static double convert(double value, TradeUnit from, TradeUnit to) {
    if (from == to) {
      return value;
    }
    try {
      UnitConverter converter = DEFINITIONS.get(from).getConverterToAny(DEFINITIONS.get(to));
      return converter.convert(value);
    } catch (IncommensurableException e) {
      throw new IllegalArgumentException(from + " and " + to + " measure different things", e);
    }
  }

  private static Map<TradeUnit, Unit<?>> definitions() {
    Unit<?> poundForce = USCustomary.POUND.multiply(STANDARD_GRAVITY);
    Unit<?> gallonPerMinute = USCustomary.GALLON_LIQUID.divide(Units.MINUTE);
    Map<TradeUnit, Unit<?>> map = new EnumMap<>(TradeUnit.class);
    map.put(TradeUnit.FOOT, USCustomary.FOOT);
    map.put(TradeUnit.INCH, USCustomary.INCH);
    map.put(TradeUnit.YARD, USCustomary.YARD);
    map.put(TradeUnit.MILE, USCustomary.MILE);
    map.put(TradeUnit.METRE, Units.METRE);
    map.put(TradeUnit.CENTIMETRE, Units.METRE.divide(100));
    map.put(TradeUnit.MILLIMETRE, Units.METRE.divide(1000));
    map.put(TradeUnit.KILOMETRE, Units.METRE.multiply(1000));
    map.put(TradeUnit.GALLON_PER_MINUTE, gallonPerMinute);
    map.put(TradeUnit.LITRE_PER_MINUTE, Units.LITRE.divide(Units.MINUTE));
    map.put(TradeUnit.LITRE_PER_SECOND, Units.LITRE.divide(Units.SECOND));
    map.put(TradeUnit.CUBIC_METRE_PER_HOUR, Units.CUBIC_METRE.divide(Units.HOUR));
    map.put(TradeUnit.CUBIC_FOOT_PER_SECOND, USCustomary.FOOT.pow(3).divide(Units.SECOND));
    map.put(TradeUnit.POUND_PER_SQUARE_INCH, poundForce.divide(USCustomary.INCH.pow(2)));
    map.put(TradeUnit.BAR, Units.PASCAL.multiply(100_000));
    map.put(TradeUnit.KILOPASCAL, Units.PASCAL.multiply(1000));
    map.put(TradeUnit.MEGAPASCAL, Units.PASCAL.multiply(1_000_000));
    map.put(TradeUnit.FOOT_OF_WATER, USCustomary.FOOT.multiply(STANDARD_GRAVITY).multiply(WATER));
    map.put(TradeUnit.FAHRENHEIT, USCustomary.FAHRENHEIT);
    map.put(TradeUnit.CELSIUS, Units.CELSIUS);
    map.put(TradeUnit.FOOT_PER_SECOND, USCustomary.FOOT.divide(Units.SECOND));
    map.put(TradeUnit.METRE_PER_SECOND, Units.METRE_PER_SECOND);
    map.put(TradeUnit.GALLON, USCustomary.GALLON_LIQUID);
    map.put(TradeUnit.LITRE, Units.LITRE);
    map.put(TradeUnit.CUBIC_METRE, Units.CUBIC_METRE);
    map.put(TradeUnit.POUND, USCustomary.POUND);
    map.put(TradeUnit.KILOGRAM, Units.KILOGRAM);
    map.put(TradeUnit.POUND_FORCE, poundForce);
    map.put(TradeUnit.NEWTON, Units.NEWTON);
    map.put(TradeUnit.PERCENT, Units.PERCENT);
    return map;
  }
}
