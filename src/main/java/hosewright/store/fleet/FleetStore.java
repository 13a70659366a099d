package hosewright.store.fleet;

import static hosewright.store.db.Tables.FLEET_LIMIT;
import static hosewright.store.db.Tables.FLEET_OUTLET;
import static hosewright.store.db.Tables.FLEET_RECORD;
import static hosewright.store.db.Tables.FLEET_SECTION;
import static org.jooq.impl.DSL.max;

import hosewright.fleet.record.AgencyLimits;
import hosewright.fleet.record.HoseRecord;
import hosewright.fleet.record.Outlet;
import hosewright.fleet.record.SectionLife;
import hosewright.fleet.record.ServiceRecord;
import hosewright.store.database.Database;
import hosewright.store.database.Rows;
import hosewright.store.database.Turns;
import hosewright.store.db.tables.records.FleetLimitRecord;
import hosewright.store.db.tables.records.FleetOutletRecord;
import hosewright.store.db.tables.records.FleetRecordRecord;
import hosewright.store.db.tables.records.FleetSectionRecord;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import org.jooq.DSLContext;

/** Keeps an agency's hose, its service records, outlets and limits. */
public final class FleetStore {
  /** Sections read or written at a time: a fleet of any size passes through this much memory. */
  private static final int PAGE = 10_000;

  private final DSLContext context;

  public FleetStore(Database database) {
    this.context = database.context();
  }

  /** Takes sections and records one by one while a fleet is loaded. */
  public interface Intake {
    /** Takes a section; one with its id that is there already is brought up to date. */
    void section(HoseRecord section);

    /** Takes a record of a section that is there. */
    void record(ServiceRecord record);
  }

  public boolean isEmpty() {
    return !context.fetchExists(FLEET_SECTION);
  }

  /** Keeps others from changing sections and records until the transaction ends. */
  public void takeTurn() {
    takeTurn(context);
  }

  private static void takeTurn(DSLContext inside) {
    Turns.take(inside, FLEET_SECTION);
    Turns.take(inside, FLEET_RECORD);
  }

  /** Forgets every section, record, outlet and limit. */
  public void clear() {
    context.deleteFrom(FLEET_RECORD).execute();
    context.deleteFrom(FLEET_SECTION).execute();
    context.deleteFrom(FLEET_OUTLET).execute();
    context.deleteFrom(FLEET_LIMIT).execute();
  }

  /**
   * Takes in what {@code source} hands out, whole or, when it throws, not at all.
   *
   * @param source is given where to put it
   */
  public void load(Consumer<Intake> source) {
    context.transaction(
        nested -> {
          takeTurn(nested.dsl());
          FleetWriter writer = new FleetWriter(nested.dsl(), lastEntry(nested.dsl()));
          source.accept(writer);
          writer.flush();
        });
  }

  /** Adds records of sections that are there, whole or not at all. */
  public void add(List<ServiceRecord> records) {
    load(intake -> records.forEach(intake::record));
  }

  /** Puts these outlets in the place of those kept. */
  public void replaceOutlets(Collection<Outlet> outlets) {
    context.transaction(
        nested -> {
          nested.dsl().deleteFrom(FLEET_OUTLET).execute();
          List<FleetOutletRecord> rows = new ArrayList<>();
          for (Outlet outlet : outlets) {
            rows.add(
                new FleetOutletRecord(
                    rows.size() + 1,
                    outlet.id(),
                    outlet.kind().name(),
                    outlet.location(),
                    outlet.end().toString(),
                    outlet.count(),
                    null));
          }
          Rows.insert(nested.dsl(), FLEET_OUTLET, rows);
        });
  }

  public List<Outlet> outlets() {
    FleetRows ends = new FleetRows();
    return context
        .selectFrom(FLEET_OUTLET)
        .orderBy(FLEET_OUTLET.OUTLET_ORDER)
        .fetch(
            row ->
                new Outlet(
                    row.getOutletId(),
                    Outlet.Kind.valueOf(row.getKind()),
                    row.getLocation(),
                    ends.end(row.getEndText()),
                    row.getEndCount()));
  }

  /** Puts these limits in the place of those kept. */
  public void replaceLimits(AgencyLimits limits) {
    context.transaction(
        nested -> {
          nested.dsl().deleteFrom(FLEET_LIMIT).execute();
          keep(nested.dsl(), "age_years", limits.ageYears());
          keep(nested.dsl(), "repairs", limits.repairs());
          keep(nested.dsl(), "failure_streak", limits.failureStreak());
          keep(nested.dsl(), "edition", Optional.of(limits.edition()));
        });
  }

  private static void keep(DSLContext inside, String key, OptionalInt value) {
    keep(inside, key, value.isPresent() ? Optional.of("" + value.getAsInt()) : Optional.empty());
  }

  private static void keep(DSLContext inside, String key, Optional<String> value) {
    value.ifPresent(text -> Rows.insert(inside, new FleetLimitRecord(key, text, null)));
  }

  public AgencyLimits limits() {
    Map<String, String> kept =
        context.selectFrom(FLEET_LIMIT).fetchMap(FLEET_LIMIT.LIMIT_KEY, FLEET_LIMIT.LIMIT_VALUE);
    return new AgencyLimits(
        number(kept.get("age_years")),
        number(kept.get("repairs")),
        number(kept.get("failure_streak")),
        kept.getOrDefault("edition", AgencyLimits.NONE.edition()));
  }

  private static OptionalInt number(String text) {
    return text == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(text));
  }

  /** The ids of all sections. */
  public Set<String> ids() {
    return new HashSet<>(
        context
            .select(FLEET_SECTION.SECTION_ID)
            .from(FLEET_SECTION)
            .fetch(FLEET_SECTION.SECTION_ID));
  }

  /** At most so many ids that begin so, in order. */
  public List<String> idsBeginning(String typed, int most) {
    return context
        .select(FLEET_SECTION.SECTION_ID)
        .from(FLEET_SECTION)
        .where(FLEET_SECTION.SECTION_ID.startsWithIgnoreCase(typed))
        .orderBy(FLEET_SECTION.SECTION_ID)
        .limit(most)
        .fetch(FLEET_SECTION.SECTION_ID);
  }

  /** A section with its records. */
  public Optional<SectionLife> find(String id) {
    return context
        .selectFrom(FLEET_SECTION)
        .where(FLEET_SECTION.SECTION_ID.eq(id))
        .fetchOptional()
        .map(
            row ->
                new SectionLife(
                    new FleetRows().section(row),
                    recordsBetween(id, id).getOrDefault(id, List.of())));
  }

  /** Hands out every section with its records, in the order of their ids. */
  public void each(Consumer<SectionLife> taker) {
    FleetRows rows = new FleetRows();
    String last = "";
    List<FleetSectionRecord> page = page(last);
    while (!page.isEmpty()) {
      String first = page.get(0).getSectionId();
      last = page.get(page.size() - 1).getSectionId();
      Map<String, List<ServiceRecord>> records = recordsBetween(first, last);
      for (FleetSectionRecord row : page) {
        taker.accept(
            new SectionLife(
                rows.section(row), records.getOrDefault(row.getSectionId(), List.of())));
      }
      page = page(last);
    }
  }

  private List<FleetSectionRecord> page(String after) {
    return context
        .selectFrom(FLEET_SECTION)
        .where(FLEET_SECTION.SECTION_ID.gt(after))
        .orderBy(FLEET_SECTION.SECTION_ID)
        .limit(PAGE)
        .fetch();
  }

  private Map<String, List<ServiceRecord>> recordsBetween(String first, String last) {
    Map<String, List<ServiceRecord>> records = new HashMap<>();
    for (FleetRecordRecord row :
        context
            .selectFrom(FLEET_RECORD)
            .where(FLEET_RECORD.SECTION_ID.between(first, last))
            .orderBy(FLEET_RECORD.SECTION_ID, FLEET_RECORD.ENTRY)
            .fetch()) {
      records
          .computeIfAbsent(row.getSectionId(), id -> new ArrayList<>())
          .add(FleetRows.record(row));
    }
    return records;
  }

  private static int lastEntry(DSLContext inside) {
    Integer last = inside.select(max(FLEET_RECORD.ENTRY)).from(FLEET_RECORD).fetchSingle().value1();
    return last == null ? 0 : last;
  }
}
