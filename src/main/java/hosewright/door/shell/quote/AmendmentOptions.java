package hosewright.door.shell.quote;

import hosewright.desk.quote.Changes;
import hosewright.desk.quote.FurtherRevision;
import hosewright.desk.quote.LineChange;
import hosewright.desk.quote.LineChange.Kind;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.option.SignedBy;
import hosewright.problem.BadInputException;
import java.util.ArrayList;
import java.util.List;

/** The options that change a quote by hand. */
final class AmendmentOptions {
  private static final String LINE = "LINE is its number on the quote or its item number";

  private AmendmentOptions() {}

  static OptionSpec[] options() {
    return new OptionSpec[] {
      OptionSpec.value(
          "group",
          "N",
          "the group that --add and the options of the job speak of; the first if none"),
      OptionSpec.value("quantity", "LINE=N", "set a line's quantity; " + LINE).asRepeatable(),
      OptionSpec.value("discount", "LINE=PERCENT", "take so much off a line; 0% ends it")
          .asRepeatable(),
      OptionSpec.value("discount-reason", "TEXT", "why; it is printed on the quote"),
      OptionSpec.value(
              "add", "WHAT", "a line more: '2 x W-SPAN-1', or free text '1 x Crating @ 35.00'")
          .asRepeatable(),
      OptionSpec.value("optional", "WHAT", "offer a line beside the total, written as for --add")
          .asRepeatable(),
      OptionSpec.value(
              "alternate", "LINE:WHAT", "offer a line instead of another: '3: 1 x W-SPAN-1'")
          .asRepeatable(),
      OptionSpec.value(
              "source", "N=PRICE", "price the N-th part still to be sourced, each; see quote ask")
          .asRepeatable(),
      OptionSpec.value("take", "LINE", "take an offered line into the total").asRepeatable(),
      OptionSpec.value("drop", "LINE", "leave a line out").asRepeatable(),
      OptionSpec.value("note", "TEXT", "a sentence for this buyer, beside those there")
          .asRepeatable(),
      OptionSpec.value("notes", "FILE", "put the sentences of a text file in place of the notes")
          .completingFiles(),
      terms()
    };
  }

  /** The number of a group. */
  static int group(String typed) {
    if (!typed.strip().matches("[1-9]\\d{0,3}")) {
      throw new BadInputException("group", typed, "the number of a group of the quote, such as 2");
    }
    return Integer.parseInt(typed.strip());
  }

  static OptionSpec terms() {
    return OptionSpec.value("terms", "FILE", "terms of sale from a text file, one a line")
        .withDefaultSaid("terms.txt in the data folder, where there is one")
        .completingFiles();
  }

  /** What is to be different. */
  static Changes changes(Invocation in) {
    List<LineChange> lines = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      in.values(kind.word()).forEach(text -> lines.add(new LineChange(kind, text)));
    }
    return new Changes(
        lines,
        in.value("discount-reason"),
        in.value("notes"),
        in.values("note"),
        in.value("terms"),
        in.value("group").map(AmendmentOptions::group));
  }

  /** A revision of the same job, and why. */
  static FurtherRevision furtherRevision(Invocation in) {
    return new FurtherRevision(
        in.argument(0).orElseThrow(), in.required("reason"), in.value("terms"), SignedBy.name(in));
  }
}
