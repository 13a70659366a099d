package hosewright.store.quote;

import static hosewright.store.db.Tables.DEALER_SETTING;
import static hosewright.store.db.Tables.FREIGHT_BAND;
import static hosewright.store.db.Tables.TAX_RATE;

import hosewright.quote.terms.DealerTerms;
import hosewright.quote.terms.FreightBand;
import hosewright.quote.terms.TaxReader;
import hosewright.quote.terms.TaxTable;
import hosewright.quote.terms.TaxTable.TaxRow;
import hosewright.store.database.Amounts;
import hosewright.store.database.Database;
import hosewright.store.database.Rows;
import hosewright.store.db.tables.records.DealerSettingRecord;
import hosewright.store.db.tables.records.FreightBandRecord;
import hosewright.store.db.tables.records.TaxRateRecord;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jooq.DSLContext;

/** Keeps the dealer's freight table and settings. */
public final class TermsStore {
  private final DSLContext context;

  public TermsStore(Database database) {
    this.context = database.context();
  }

  /** Puts these terms in the place of those kept, whole or not at all. */
  public void replace(DealerTerms terms) {
    context.transaction(
        nested -> {
          DSLContext inside = nested.dsl();
          inside.deleteFrom(FREIGHT_BAND).execute();
          inside.deleteFrom(DEALER_SETTING).execute();
          Rows.insert(inside, FREIGHT_BAND, terms.freight().stream().map(TermsStore::row).toList());
          Rows.insert(
              inside,
              DEALER_SETTING,
              terms.settings().entrySet().stream()
                  .map(entry -> new DealerSettingRecord(entry.getKey(), entry.getValue(), null))
                  .toList());
        });
  }

  /** Puts this table of taxes in the place of the one kept, whole or not at all. */
  public void replaceTaxes(TaxTable taxes) {
    context.transaction(
        nested -> {
          nested.dsl().deleteFrom(TAX_RATE).execute();
          Rows.insert(nested.dsl(), TAX_RATE, taxes.rows().stream().map(TermsStore::row).toList());
        });
  }

  private static TaxRateRecord row(TaxRow tax) {
    return new TaxRateRecord(
        tax.place(),
        tax.from(),
        tax.until().orElse(null),
        tax.charge().name(),
        tax.charge().rate(),
        tax.charge().onFreight(),
        tax.charge().untaxed().stream().sorted().collect(Collectors.joining(";")),
        null);
  }

  private TaxTable taxes() {
    return new TaxTable(
        context
            .selectFrom(TAX_RATE)
            .orderBy(TAX_RATE.PLACE, TAX_RATE.VALID_FROM)
            .fetch(
                row ->
                    new TaxRow(
                        row.getPlace(),
                        row.getValidFrom(),
                        Optional.ofNullable(row.getValidUntil()),
                        new TaxTable.Charge(
                            row.getTaxName(),
                            row.getRate().stripTrailingZeros(),
                            row.getOnFreight(),
                            TaxReader.untaxed(row.getUntaxed())))));
  }

  public DealerTerms load() {
    return new DealerTerms(
        context
            .selectFrom(FREIGHT_BAND)
            .orderBy(FREIGHT_BAND.UP_TO_LB)
            .fetch(
                row ->
                    new FreightBand(
                        row.getUpToLb(), Amounts.money(row.getCharge(), row.getCurrency()))),
        context
            .selectFrom(DEALER_SETTING)
            .fetchMap(DEALER_SETTING.SETTING_KEY, DEALER_SETTING.SETTING_VALUE),
        taxes());
  }

  private static FreightBandRecord row(FreightBand band) {
    return new FreightBandRecord(
        band.upToLb(), band.charge().getAmount(), Amounts.code(band.charge()), null);
  }
}
