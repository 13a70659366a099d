package hosewright.line;

import hosewright.catalogue.Item;
import java.util.Map;

/**
 * One way to get a section of a hose line: bought coupled, or made up from parts.
 *
 * @param item the coupled hose, or the bulk hose it is cut from
 * @param lengthFt coupled length, ft
 * @param description what a buyer reads
 * @param bill items and quantities one section takes
 * @param weightLb empty weight of one section, lb
 */
record SectionOption(
    Item item, double lengthFt, String description, Map<Item, Integer> bill, double weightLb) {}
