package hosewright.store.catalogue;

import static hosewright.store.db.Tables.ITEM;
import static hosewright.store.db.Tables.ITEM_DERATING;
import static hosewright.store.db.Tables.ITEM_END;
import static hosewright.store.db.Tables.ITEM_FLUID;

import hosewright.catalogue.HoseType;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.Sort;
import hosewright.catalogue.find.Listing;
import hosewright.store.db.tables.records.ItemDeratingRecord;
import hosewright.store.db.tables.records.ItemEndRecord;
import hosewright.store.db.tables.records.ItemFluidRecord;
import hosewright.store.db.tables.records.ItemRecord;
import hosewright.store.order.StockRows;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.impl.DSL;

/** Reads items from the store: so many queries, whatever the number of items. */
final class ItemQuery {
  private final DSLContext context;

  ItemQuery(DSLContext context) {
    this.context = context;
  }

  /**
   * The items listed, in the order of the catalogue; their stock is what is promised to nobody.
   *
   * @param only the items wanted; all when empty
   */
  List<Item> items(Optional<Collection<String>> only) {
    Map<String, List<End>> ends = ends(only);
    Map<String, ? extends List<ItemDeratingRecord>> deratings =
        context
            .selectFrom(ITEM_DERATING)
            .where(about(ITEM_DERATING.ITEM_NUMBER, only))
            .orderBy(ITEM_DERATING.ITEM_NUMBER, ITEM_DERATING.TEMPERATURE_F)
            .fetchGroups(ITEM_DERATING.ITEM_NUMBER);
    Map<String, ? extends List<ItemFluidRecord>> fluids =
        context
            .selectFrom(ITEM_FLUID)
            .where(about(ITEM_FLUID.ITEM_NUMBER, only))
            .fetchGroups(ITEM_FLUID.ITEM_NUMBER);
    Map<String, Integer> free = StockRows.free(context);
    List<Item> items = new ArrayList<>();
    try (Cursor<ItemRecord> rows =
        context
            .selectFrom(ITEM)
            .where(ITEM.FILE_ORDER.isNotNull())
            .and(about(ITEM.ITEM_NUMBER, only))
            .orderBy(ITEM.FILE_ORDER)
            .fetchLazy()) {
      for (ItemRecord row : rows) {
        String number = row.getItemNumber();
        row.setOnHand(Math.max(0, free.getOrDefault(number, 0)));
        items.add(
            ItemRows.item(
                row,
                ends.getOrDefault(number, List.of()),
                deratings.containsKey(number) ? deratings.get(number) : List.of(),
                fluids.containsKey(number) ? fluids.get(number) : List.of()));
      }
    }
    return items;
  }

  /** What is looked at in a search, of every item listed, in the order of the catalogue. */
  List<Listing> listings() {
    Map<String, List<End>> ends = ends(Optional.empty());
    Map<String, Integer> free = StockRows.free(context);
    List<Listing> listings = new ArrayList<>();
    try (var rows =
        context
            .select(
                ITEM.ITEM_NUMBER,
                ITEM.KIND,
                ITEM.DESCRIPTION,
                ITEM.MATERIAL,
                ITEM.SERIES,
                ITEM.MARKED_TO,
                ITEM.HOSE_SIZE_IN,
                ITEM.LENGTH_FT,
                ITEM.DISCONTINUED,
                ITEM.SORT,
                ITEM.HOSE_TYPE)
            .from(ITEM)
            .where(ITEM.FILE_ORDER.isNotNull())
            .orderBy(ITEM.FILE_ORDER)
            .fetchLazy()) {
      rows.forEach(
          row ->
              listings.add(
                  new Listing(
                      row.value1(),
                      ItemKind.valueOf(row.value2()),
                      Listing.words(
                          row.value3(),
                          row.value4(),
                          row.value5(),
                          row.value6(),
                          Sort.valueOf(row.value10()).said(),
                          row.value11() == null ? "" : HoseType.valueOf(row.value11()).said()),
                      ends.getOrDefault(row.value1(), List.of()),
                      ItemRows.orEmpty(row.value7()),
                      ItemRows.orEmpty(row.value8()),
                      new Listing.Shelf(
                          row.value9(), Math.max(0, free.getOrDefault(row.value1(), 0))))));
    }
    return listings;
  }

  /** The ends of items in their order, row by row. */
  private Map<String, List<End>> ends(Optional<Collection<String>> only) {
    Map<String, List<End>> ends = new HashMap<>();
    try (Cursor<ItemEndRecord> rows =
        context
            .selectFrom(ITEM_END)
            .where(about(ITEM_END.ITEM_NUMBER, only))
            .orderBy(ITEM_END.ITEM_NUMBER, ITEM_END.END_ORDER)
            .fetchLazy()) {
      for (ItemEndRecord row : rows) {
        ends.computeIfAbsent(row.getItemNumber(), number -> new ArrayList<>(2))
            .add(ItemRows.end(row));
      }
    }
    return ends;
  }

  /** The condition that a row is about the items wanted. */
  static Condition about(Field<String> number, Optional<Collection<String>> only) {
    return only.map(number::in).orElseGet(DSL::noCondition);
  }
}
