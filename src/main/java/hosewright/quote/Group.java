package hosewright.quote;

import hosewright.line.model.LinePlan;

/**
 * What a quote sells for one purpose: a job laid, or parts alone. A quote of one job has one group.
 *
 * @param number 1 for the first; it stays the group's own in every revision
 * @param jobYaml the job file it was planned from, as text
 * @param plan the plan as it stood; of parts alone it lays nothing
 */
public record Group(int number, Heading heading, String jobYaml, LinePlan plan) {
  /** The number of the first, which a quote always has. */
  public static final int FIRST = 1;

  /** Parts a key of a line: the group's number before what names the line within it. */
  private static final String OF = ": ";

  /**
   * How it is told from others.
   *
   * @param count how often the whole of it is sold
   * @param optional whether it stands beside the total, for the buyer to take as well
   */
  public record Heading(String title, int count, boolean optional) {
    /** Of what is sold once and is part of the total. */
    public static Heading of(String title) {
      return new Heading(title, 1, false);
    }

    /** As papers name it: {@code 2 x Engine set}. */
    public String words() {
      return count == 1 ? title : count + " x " + title;
    }
  }

  /** What a buyer calls it. */
  public String title() {
    return heading.title();
  }

  /** How often the whole of it is sold. */
  public int count() {
    return heading.count();
  }

  /** Whether it stands beside the total. */
  public boolean optional() {
    return heading.optional();
  }

  /** Whether something is laid in it, and not parts alone. */
  public boolean laid() {
    return !plan.layout().legs().isEmpty();
  }

  /** What names a line among those of every group; in the first it is the line's own name. */
  static String key(int group, String line) {
    return group == FIRST ? line : group + OF + line;
  }

  /** This group with another plan. */
  public Group with(LinePlan other) {
    return new Group(number, heading, jobYaml, other);
  }
}
