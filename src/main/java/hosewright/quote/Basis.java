package hosewright.quote;

import hosewright.line.model.LinePlan;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a quote was made from.
 *
 * @param title of the whole purchase
 * @param jobYaml the job file its first group was made from, as text
 * @param plan of its first group as it stood
 * @param tender the row of a tender it was made for; empty for most
 * @param firstGroup how its first group is told from the further ones
 * @param furtherGroups what is sold beside the first group
 */
public record Basis(
    String title,
    String jobYaml,
    LinePlan plan,
    Optional<TenderRow> tender,
    Group.Heading firstGroup,
    List<Group> furtherGroups) {

  /** Documents kept before tenders were noted, or before there were groups, say nothing of it. */
  public Basis {
    tender = tender == null ? Optional.empty() : tender;
    firstGroup = firstGroup == null ? Group.Heading.of(title) : firstGroup;
    furtherGroups = furtherGroups == null ? List.of() : List.copyOf(furtherGroups);
  }

  /** What a quote of one group was made from. */
  public Basis(String title, String jobYaml, LinePlan plan, Optional<TenderRow> tender) {
    this(title, jobYaml, plan, tender, null, null);
  }

  /** What a quote asked for alone was made from. */
  public Basis(String title, String jobYaml, LinePlan plan) {
    this(title, jobYaml, plan, Optional.empty());
  }

  /**
   * What a purchase of several groups is made from.
   *
   * @param groups numbered from 1; at least one
   */
  public static Basis of(String title, Optional<TenderRow> tender, List<Group> groups) {
    Group first = groups.get(0);
    return new Basis(
        title,
        first.jobYaml(),
        first.plan(),
        tender,
        first.heading(),
        groups.subList(1, groups.size()));
  }

  /** Every group, the first one first. */
  public List<Group> groups() {
    return Stream.concat(
            Stream.of(new Group(Group.FIRST, firstGroup, jobYaml, plan)), furtherGroups.stream())
        .toList();
  }

  /** The group of a number; the first where there is none of it. */
  public Group group(int number) {
    return groups().stream()
        .filter(group -> group.number() == number)
        .findFirst()
        .orElseGet(() -> groups().get(0));
  }

  /** The same purchase with other groups in the place of those there. */
  public Basis with(List<Group> groups) {
    return of(title, tender, groups);
  }

  /** The same purchase under another title; a quote of one group is titled as a whole. */
  public Basis titled(String other) {
    Group.Heading heading =
        furtherGroups.isEmpty()
            ? new Group.Heading(other, firstGroup.count(), firstGroup.optional())
            : firstGroup;
    return new Basis(other, jobYaml, plan, tender, heading, furtherGroups);
  }

  /**
   * A row of a file that a run of a tender priced.
   *
   * @param sha256 first digits of the digest of the file, in hexadecimal
   * @param begun when the run began
   * @param line the line of the file the row begins on
   */
  public record TenderRow(String sha256, Instant begun, long line) {}
}
