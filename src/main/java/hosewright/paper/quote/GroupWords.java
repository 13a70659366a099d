package hosewright.paper.quote;

import hosewright.quote.Group;
import hosewright.quote.Quote;
import java.util.List;

/** What papers say of the groups of a quote. */
final class GroupWords {
  private GroupWords() {}

  /** What a group is for, and how often its goods are in the lines below. */
  static String summary(Group group) {
    return group.plan().summary()
        + (group.count() == 1
            ? ""
            : (group.laid() ? " The drawing shows one; the" : " The")
                + " lines have the goods of all "
                + group.count()
                + ".");
  }

  /** Which group a sheet is about, behind its title; nothing where there is one only. */
  static String behind(Quote quote, Group group) {
    return quote.groups().size() == 1 ? "" : ": " + group.heading().words();
  }

  /** Which group a sentence speaks of, before the sentence; nothing where there is one only. */
  static String before(Quote quote, Group group) {
    return quote.groups().size() == 1 ? "" : group.title() + ": ";
  }

  /** Which groups a sentence speaks of, before the sentence; nothing where there is one only. */
  static String before(Quote quote, List<Group> groups) {
    List<String> titles = groups.stream().map(Group::title).distinct().toList();
    int last = titles.size() - 1;
    return quote.groups().size() == 1
        ? ""
        : (last == 0 ? "" : String.join(", ", titles.subList(0, last)) + " and ")
            + titles.get(last)
            + ": ";
  }
}
