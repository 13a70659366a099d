package hosewright.store.fleet;

import static hosewright.store.db.Tables.FLEET_RECORD;
import static hosewright.store.db.Tables.FLEET_SECTION;

import hosewright.fleet.record.HoseRecord;
import hosewright.fleet.record.ServiceRecord;
import hosewright.store.database.Rows;
import hosewright.store.db.tables.records.FleetRecordRecord;
import hosewright.store.db.tables.records.FleetSectionRecord;
import java.util.ArrayList;
import java.util.List;
import org.jooq.DSLContext;

/** Writes sections and records in batches, inside one transaction. */
final class FleetWriter implements FleetStore.Intake {
  private static final int BATCH = 5_000;

  private final DSLContext inside;
  private final boolean empty;
  private final List<FleetSectionRecord> sections = new ArrayList<>();
  private final List<FleetRecordRecord> records = new ArrayList<>();
  private int entry;

  FleetWriter(DSLContext inside, int lastEntry) {
    this.inside = inside;
    this.entry = lastEntry;
    this.empty = !inside.fetchExists(FLEET_SECTION);
  }

  @Override
  public void section(HoseRecord section) {
    sections.add(FleetRows.row(section));
    if (sections.size() >= BATCH) {
      flushSections();
    }
  }

  @Override
  public void record(ServiceRecord record) {
    entry++;
    records.add(FleetRows.row(record, entry));
    if (records.size() >= BATCH) {
      flush();
    }
  }

  void flush() {
    flushSections();
    Rows.insert(inside, FLEET_RECORD, records);
    records.clear();
  }

  /** Into an empty store rows go in by one plain statement; else what is there is updated. */
  private void flushSections() {
    if (empty) {
      Rows.insert(inside, FLEET_SECTION, sections);
    } else {
      Rows.merge(inside, FLEET_SECTION, sections);
    }
    sections.clear();
  }
}
