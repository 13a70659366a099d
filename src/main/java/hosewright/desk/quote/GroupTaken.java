package hosewright.desk.quote;

import hosewright.problem.BadInputException;
import hosewright.quote.Basis;
import hosewright.quote.Group;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes an optional group of a quote into its total: {@code group 3}. */
final class GroupTaken {
  private static final Pattern WRITTEN = Pattern.compile("(?i)\\s*group\\s+(\\d{1,4})\\s*");

  private GroupTaken() {}

  /** The number of the group a text names; empty where it names a line. */
  static Optional<Integer> named(String text) {
    Matcher written = WRITTEN.matcher(text);
    return written.matches() ? Optional.of(Integer.parseInt(written.group(1))) : Optional.empty();
  }

  /**
   * The purchase with the groups named in its total.
   *
   * @throws BadInputException where one is no optional group
   */
  static Basis into(Basis basis, List<String> taken) {
    Basis now = basis;
    for (String text : taken) {
      Optional<Integer> number = named(text);
      if (number.isPresent()) {
        now = into(now, text, number.get());
      }
    }
    return now;
  }

  private static Basis into(Basis basis, String text, int number) {
    if (basis.groups().stream().noneMatch(group -> isOptional(group, number))) {
      throw new BadInputException(
          "take",
          text,
          "an optional group: "
              + String.join(
                  ", ",
                  basis.groups().stream()
                      .filter(Group::optional)
                      .map(group -> "group " + group.number())
                      .toList()));
    }
    return basis.with(
        basis.groups().stream()
            .map(
                group ->
                    isOptional(group, number)
                        ? new Group(
                            group.number(),
                            new Group.Heading(group.title(), group.count(), false),
                            group.jobYaml(),
                            group.plan())
                        : group)
            .toList());
  }

  private static boolean isOptional(Group group, int number) {
    return group.number() == number && group.optional();
  }
}
