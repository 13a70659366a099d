package hosewright.line.plan;

import hosewright.catalogue.Item;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.GasketCount;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.SectionOption;
import hosewright.line.goods.Basket;
import hosewright.line.goods.Billing;
import hosewright.line.model.Accessory;
import hosewright.line.model.Bill;
import hosewright.line.model.Part;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * Writes down what is bought for one line or several.
 *
 * @param spareSections how many sections are wanted beyond those of each line
 */
record BillWriter(Billing.Priced bill, Money total, LocalDate date, int spareSections) {

  /**
   * @param lines each with how many times it is laid
   */
  Bill of(List<Laid> lines, List<GasketCount> gaskets, List<Accessory> accessories) {
    List<Bill.Spare> spares = new ArrayList<>();
    lines.forEach(line -> addSpares(line, spares));
    return new Bill(
        bill.purchases().stream().map(BillWriter::item).toList(),
        bill.unpriced(),
        total,
        date,
        gaskets(gaskets),
        spares,
        accessories);
  }

  /** A line that is laid so many times. */
  record Laid(Assembly line, int copies) {}

  private void addSpares(Laid laid, List<Bill.Spare> spares) {
    Assembly line = laid.line();
    for (int i = 0; i < line.lays().size(); i++) {
      LegShape leg = line.topology().legs().get(i);
      Lay lay = line.lays().get(i);
      int count = leg.hose().sparesToBuy(lay, leg.lines() * laid.copies(), spareSections);
      leg.hose().spare(lay).stream()
          .filter(option -> count > 0)
          .forEach(option -> spares.add(spare(leg, option, count)));
    }
  }

  private static Bill.Spare spare(LegShape leg, SectionOption option, int count) {
    return new Bill.Spare(
        option.item().map(Item::number).orElse(""),
        leg.hose().sizeIn(),
        new Part.Ends(Optional.of(leg.inlet()), Optional.of(leg.outlet())),
        new Part.Section(option.lengthFt(), option.cutFt()),
        count);
  }

  private static Bill.Gaskets gaskets(List<GasketCount> gaskets) {
    int fitted = 0;
    int bought = 0;
    int spare = 0;
    for (GasketCount gasket : gaskets) {
      fitted += gasket.fitted();
      bought += gasket.bought();
      spare += gasket.spare();
    }
    return new Bill.Gaskets(fitted, bought, spare);
  }

  private static Bill.Item item(Basket.Purchase purchase) {
    return new Bill.Item(
        purchase.item().number(),
        purchase.item().description(),
        purchase.bought(),
        purchase.bought() - purchase.needed(),
        purchase.item().unit().word(),
        purchase.unitPrice(),
        purchase.item().weightLb() * purchase.bought());
  }
}
