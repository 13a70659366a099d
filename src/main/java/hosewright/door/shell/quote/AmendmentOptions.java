package hosewright.door.shell.quote;

import hosewright.desk.quote.Changes;
import hosewright.desk.quote.FurtherRevision;
import hosewright.desk.quote.LineChange;
import hosewright.desk.quote.LineChange.Kind;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.option.OrderArgument;
import hosewright.door.shell.option.SignedBy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The options that change a quote by hand. */
final class AmendmentOptions {
  private static final String LINE = "LINE is its number on the quote or its item number";

  private AmendmentOptions() {}

  static OptionSpec[] options() {
    return Stream.concat(
            Stream.of(
                OptionSpec.value(
                    "group",
                    "N",
                    "the group that --add and the options of the job speak of; the first if none"),
                OptionSpec.value("quantity", "LINE=N", "set a line's quantity; " + LINE)
                    .asRepeatable(),
                OptionSpec.value(
                        "add",
                        "WHAT",
                        "a line more: '2 x W-SPAN-1', or free text '1 x Crating @ 35.00'")
                    .asRepeatable(),
                OptionSpec.value(
                        "optional", "WHAT", "offer a line beside the total, written as for --add")
                    .asRepeatable(),
                OptionSpec.value(
                        "alternate",
                        "LINE:WHAT",
                        "offer a line instead of another: '3: 1 x W-SPAN-1'")
                    .asRepeatable(),
                OptionSpec.value(
                        "source",
                        "N=PRICE",
                        "price the N-th part still to be sourced, each; see quote ask")
                    .asRepeatable(),
                OptionSpec.value(
                        "take", "LINE", "take an offered line into the total, or 'group 3'")
                    .asRepeatable(),
                OptionSpec.value("drop", "LINE", "leave a line out").asRepeatable()),
            Stream.concat(Arrays.stream(onNew()), Stream.of(terms())))
        .toArray(OptionSpec[]::new);
  }

  /** What may be set on a new quote too, before anybody has seen it. */
  static OptionSpec[] onNew() {
    return new OptionSpec[] {
      OptionSpec.value("price", "LINE=PRICE", "set the price of one by hand; LINE=list ends it")
          .asRepeatable(),
      OptionSpec.value("price-reason", "TEXT", "why; seen with quote show --internal alone"),
      OptionSpec.value("discount", "LINE=PERCENT", "take so much off a line; 0% ends it")
          .asRepeatable(),
      OptionSpec.value("discount-reason", "TEXT", "why; it is printed on the quote"),
      OptionSpec.value("order", "LINES", "lines in this order within their groups: '3, 1, 2'")
          .asRepeatable(),
      OptionSpec.value("heading", "LINE=TEXT", "words above a line; nothing behind = ends it")
          .asRepeatable(),
      OptionSpec.value("remark", "LINE=TEXT", "words for the buyer below a line").asRepeatable(),
      OptionSpec.value(
          "freight", "SUM", "freight as agreed: 85.00; 'terms' for what the customer's terms say"),
      OptionSpec.value(
          "ship-to", "PLACE", "where to, whose tax is charged; 'usual' for the customer's own"),
      OptionSpec.value("note", "TEXT", "a sentence for this buyer, beside those there")
          .asRepeatable(),
      OptionSpec.value("notes", "FILE", "put the sentences of a text file in place of the notes")
          .completingFiles()
    };
  }

  static OptionSpec terms() {
    return OptionSpec.value("terms", "FILE", "terms of sale from a text file, one a line")
        .withDefaultSaid("terms.txt in the data folder, where there is one")
        .completingFiles();
  }

  /** What is to be different. */
  static Changes changes(Invocation in) {
    return changes(in, Arrays.asList(Kind.values()), in.value("terms"), OrderArgument.group(in));
  }

  /** What is set by hand on a new quote, of the options {@link #onNew} gives. */
  static Changes changesOfNew(Invocation in) {
    Set<String> offered =
        Arrays.stream(onNew()).map(OptionSpec::name).collect(Collectors.toUnmodifiableSet());
    return changes(
        in,
        Arrays.stream(Kind.values()).filter(kind -> offered.contains(kind.word())).toList(),
        Optional.empty(),
        Optional.empty());
  }

  private static Changes changes(
      Invocation in, List<Kind> kinds, Optional<String> terms, Optional<Integer> group) {
    List<LineChange> lines = new ArrayList<>();
    for (Kind kind : kinds) {
      in.values(kind.word()).forEach(text -> lines.add(new LineChange(kind, text)));
    }
    return new Changes(
        lines,
        in.value("discount-reason"),
        in.value("notes"),
        in.values("note"),
        terms,
        group,
        in.value("price-reason"));
  }

  /** A revision of the same job, and why. */
  static FurtherRevision furtherRevision(Invocation in) {
    return new FurtherRevision(
        in.argument(0).orElseThrow(), in.required("reason"), in.value("terms"), SignedBy.name(in));
  }
}
