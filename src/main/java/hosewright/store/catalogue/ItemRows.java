package hosewright.store.catalogue;

import hosewright.catalogue.Build;
import hosewright.catalogue.Form;
import hosewright.catalogue.HoseFacts;
import hosewright.catalogue.HoseType;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemFacts;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.PumpFacts;
import hosewright.catalogue.Rating;
import hosewright.catalogue.Selling;
import hosewright.catalogue.Sort;
import hosewright.catalogue.Stated;
import hosewright.catalogue.Stocking;
import hosewright.catalogue.UnitOfSale;
import hosewright.catalogue.WaterFacts;
import hosewright.catalogue.reading.ItemCells;
import hosewright.store.db.tables.records.ItemDeratingRecord;
import hosewright.store.db.tables.records.ItemEndRecord;
import hosewright.store.db.tables.records.ItemFluidRecord;
import hosewright.store.db.tables.records.ItemRecord;
import hosewright.thread.End;
import hosewright.thread.Gender;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** An item as rows, and back. */
final class ItemRows {
  private ItemRows() {}

  static ItemRecord main(Item item, int fileOrder) {
    ItemRecord row = new ItemRecord();
    row.setItemNumber(item.number());
    row.setDescription(item.description());
    row.setKind(item.kind().name());
    row.setUnit(item.unit().name());
    row.setWeightLb(item.weightLb());
    row.setMaterial(item.material());
    row.setWorkingPsi(orNull(item.rating().workingPsi()));
    row.setServiceTestPsi(orNull(item.rating().serviceTestPsi()));
    row.setVacuumInhg(orNull(item.rating().vacuumInHg()));
    setForm(row, item.form());
    setHose(row, item.hose());
    row.setWaterwayIn(orNull(item.water().waterwayIn()));
    row.setRatedFlowGpm(orNull(item.water().ratedFlowGpm()));
    row.setRatedPressurePsi(orNull(item.water().ratedPressurePsi()));
    row.setLossK(orNull(item.lossCoefficient()));
    row.setApplianceLossPsi(orNull(item.applianceLossPsi()));
    row.setOpeningIn(orNull(item.opening()));
    row.setKFactor(orNull(item.kFactor()));
    row.setDrinkingWater(item.drinkingWater());
    row.setDiscontinued(item.discontinued());
    row.setMarkedTo(item.markedTo());
    row.setGasketsFitted(item.comesWithGaskets());
    String supplier = item.stocking().supplier();
    row.setSupplierCode(supplier.isEmpty() ? null : supplier);
    row.setPackSize(item.stocking().packSize());
    row.setLeadDays(item.stocking().leadDays());
    row.setOnHand(item.stocking().onHand());
    row.setFileOrder(fileOrder);
    return row;
  }

  static List<ItemEndRecord> ends(Item item) {
    List<ItemEndRecord> rows = new ArrayList<>();
    for (End end : item.ends()) {
      rows.add(
          new ItemEndRecord(
              item.number(),
              rows.size() + 1,
              end.sizeIn(),
              end.family(),
              end.gender().name(),
              end.swivel(),
              null));
    }
    return rows;
  }

  static List<ItemDeratingRecord> deratings(Item item) {
    return item.rating().derating().stream()
        .map(
            step ->
                new ItemDeratingRecord(item.number(), step.temperatureF(), step.workingPsi(), null))
        .toList();
  }

  static List<ItemFluidRecord> fluids(Item item) {
    return item.fluids().stream()
        .map(fluid -> new ItemFluidRecord(item.number(), fluid, null))
        .toList();
  }

  /**
   * The item again.
   *
   * @param ends its ends in order
   * @param deratings its steps, coolest first
   */
  static Item item(
      ItemRecord row,
      List<End> ends,
      List<ItemDeratingRecord> deratings,
      List<ItemFluidRecord> fluids) {
    return new Item(
        row.getItemNumber(),
        row.getDescription(),
        form(row, ends),
        hose(row),
        build(row, deratings, fluids),
        water(row),
        new Selling(
            UnitOfSale.valueOf(row.getUnit()),
            row.getDiscontinued(),
            new Stocking(
                row.getSupplierCode() == null ? "" : row.getSupplierCode(),
                row.getPackSize(),
                row.getLeadDays(),
                row.getOnHand())));
  }

  private static void setForm(ItemRecord row, Form form) {
    row.setSort(form.sort().name());
    row.setGated(form.gated().name());
    row.setShutoff(form.shutoff().name());
    row.setChannels(form.channels().isPresent() ? form.channels().getAsInt() : null);
    row.setPumpCurve(form.pump().map(ItemFacts::curve).orElse(null));
    row.setFuel(form.pump().map(PumpFacts::fuel).filter(fuel -> !fuel.isEmpty()).orElse(null));
  }

  private static Form form(ItemRecord row, List<End> ends) {
    return new Form(
        ItemKind.valueOf(row.getKind()),
        Sort.valueOf(row.getSort()),
        ends,
        Stated.valueOf(row.getGated()),
        Stated.valueOf(row.getShutoff()),
        row.getChannels() == null ? OptionalInt.empty() : OptionalInt.of(row.getChannels()),
        pump(row));
  }

  private static Optional<PumpFacts> pump(ItemRecord row) {
    return Optional.ofNullable(row.getPumpCurve())
        .map(
            curve ->
                new PumpFacts(
                    Arrays.stream(curve.split(";"))
                        .map(point -> ItemCells.point(point.strip()))
                        .toList(),
                    row.getFuel() == null ? "" : row.getFuel()));
  }

  private static Build build(
      ItemRecord row, List<ItemDeratingRecord> deratings, List<ItemFluidRecord> fluids) {
    return new Build(
        row.getMaterial(),
        row.getWeightLb(),
        fluids.stream().map(ItemFluidRecord::getFluid).collect(Collectors.toSet()),
        rating(row, deratings),
        row.getDrinkingWater(),
        row.getMarkedTo(),
        row.getGasketsFitted());
  }

  private static WaterFacts water(ItemRecord row) {
    return new WaterFacts(
        orEmpty(row.getWaterwayIn()),
        orEmpty(row.getLossK()),
        orEmpty(row.getApplianceLossPsi()),
        orEmpty(row.getOpeningIn()),
        orEmpty(row.getKFactor()),
        orEmpty(row.getRatedFlowGpm()),
        orEmpty(row.getRatedPressurePsi()));
  }

  private static void setHose(ItemRecord row, Optional<HoseFacts> hose) {
    row.setHoseType(hose.map(facts -> facts.type().name()).orElse(null));
    row.setHoseSizeIn(hose.map(HoseFacts::sizeIn).orElse(null));
    row.setLengthFt(hose.map(facts -> orNull(facts.lengthFt())).orElse(null));
    row.setSeries(hose.map(HoseFacts::series).orElse(null));
    row.setFrictionCoefficient(hose.map(facts -> orNull(facts.frictionCoefficient())).orElse(null));
    row.setBoreIn(hose.map(facts -> orNull(facts.boreIn())).orElse(null));
    row.setBowlIn(hose.map(facts -> orNull(facts.bowlIn())).orElse(null));
    row.setWaveSpeedFtS(hose.map(facts -> orNull(facts.waveSpeedFtPerS())).orElse(null));
  }

  private static Optional<HoseFacts> hose(ItemRecord row) {
    return Optional.ofNullable(row.getHoseSizeIn())
        .map(
            sizeIn ->
                new HoseFacts(
                    row.getHoseType() == null
                        ? HoseType.UNKNOWN
                        : HoseType.valueOf(row.getHoseType()),
                    row.getSeries(),
                    new HoseFacts.Diameters(
                        sizeIn, orEmpty(row.getBoreIn()), orEmpty(row.getBowlIn())),
                    orEmpty(row.getLengthFt()),
                    orEmpty(row.getFrictionCoefficient()),
                    orEmpty(row.getWaveSpeedFtS())));
  }

  private static Rating rating(ItemRecord row, List<ItemDeratingRecord> deratings) {
    return new Rating(
        orEmpty(row.getWorkingPsi()),
        orEmpty(row.getServiceTestPsi()),
        deratings.stream()
            .map(step -> new Rating.Derating(step.getTemperatureF(), step.getWorkingPsi()))
            .toList(),
        orEmpty(row.getVacuumInhg()));
  }

  static End end(ItemEndRecord row) {
    return new End(
        row.getSizeIn(), row.getFamily(), Gender.valueOf(row.getGender()), row.getSwivel());
  }

  private static Double orNull(OptionalDouble number) {
    return number.isPresent() ? (Double) number.getAsDouble() : null;
  }

  static OptionalDouble orEmpty(Double number) {
    return number == null ? OptionalDouble.empty() : OptionalDouble.of(number);
  }
}
