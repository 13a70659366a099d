package hosewright.paper.quote;

import hosewright.quote.Group;
import hosewright.quote.Quote;

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
}
