package hosewright.desk.edit;

import hosewright.desk.quote.Changes;
import hosewright.desk.quote.LineChange;
import hosewright.desk.quote.LineChange.Kind;
import hosewright.problem.BadInputException;
import hosewright.problem.PlainText;
import hosewright.problem.Problem;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A quote as a small text that is edited and read back: its lines with number, quantity and price,
 * in their order, under their headings.
 */
final class EditSheet {
  private static final String HELP =
      """
      # A line is: number | quantity | price of one | item or text.
      # Move lines within their group, change them, or take one out to drop it.
      # A new line has + for its number: + | 2 | | W-SPAN-1   or   + | 1 | 35.00 | Crating
      # == WORDS is a heading above the next line; -- WORDS stands for the buyer below a line.
      # A price changed needs a price-reason, which no paper says. 'list' ends a price set so.
      """;

  /** What a line of the sheet begins with that is no line of the quote. */
  private enum Mark {
    REASON("reason:"),
    PRICE_REASON("price-reason:"),
    NOTE("note:"),
    HEADING("=="),
    REMARK("--");

    private final String written;

    Mark(String written) {
      this.written = written;
    }

    static Optional<Mark> of(String line) {
      return Arrays.stream(values()).filter(mark -> line.startsWith(mark.written)).findFirst();
    }

    String behind(String line) {
      return line.substring(written.length()).strip();
    }
  }

  private final Quote quote;
  private final Map<Integer, QuoteLine> lines = new LinkedHashMap<>();
  private final List<Problem> problems = new ArrayList<>();
  private final List<LineChange> changes = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private final Set<Integer> seen = new LinkedHashSet<>();
  private final Map<Integer, String> headings = new LinkedHashMap<>();
  private final Map<Integer, String> remarks = new LinkedHashMap<>();
  private final Set<Integer> addedTo = new LinkedHashSet<>();
  private String reason = "";
  private String priceReason = "";
  private int group = Group.FIRST;
  private String heading = "";
  private int last;

  private EditSheet(Quote quote) {
    this.quote = quote;
    quote.itemised().forEach(line -> lines.put(line.position(), line));
  }

  /** What a sheet asks for, and why. */
  record Edited(String reason, Changes changes) {}

  /** The quote as it stands. */
  static String of(Quote quote) {
    StringBuilder text = new StringBuilder("# " + quote.name().words() + ", for ");
    text.append(quote.customer().name()).append('\n').append(HELP);
    text.append(Mark.REASON.written + "\n" + Mark.PRICE_REASON.written + "\n");
    for (Group group : quote.groups()) {
      text.append("\n[").append(group.number()).append("] ").append(group.title()).append('\n');
      for (QuoteLine line : quote.lines(group)) {
        quote
            .heading(line)
            .ifPresent(words -> text.append(Mark.HEADING.written + " ").append(words).append('\n'));
        text.append(
            "%d | %d | %s | %s%n"
                .formatted(line.position(), line.quantity(), price(line), line.goods().key()));
        remark(quote, line)
            .ifPresent(words -> text.append(Mark.REMARK.written + " ").append(words).append('\n'));
      }
    }
    // What an older version kept is not put on the screen of whatever editor is set.
    return PlainText.without(text.toString());
  }

  /** The price of one before a line discount. */
  private static String price(QuoteLine line) {
    return line.price()
        .agreed()
        .orElseGet(
            () ->
                line.price().discount().isEmpty()
                    ? line.price().unitPrice()
                    : line.price().breaks().stream()
                        .filter(step -> step.minimumQuantity() <= line.quantity())
                        .reduce((smaller, larger) -> larger)
                        .map(QuoteLine.Break::unitPrice)
                        .orElse(line.price().unitPrice()))
        .getAmount()
        .toPlainString();
  }

  private static Optional<String> remark(Quote quote, QuoteLine line) {
    return Optional.ofNullable(quote.offer().amendments().byHand().remarks().get(line.key()));
  }

  /**
   * What an edited sheet asks to be different.
   *
   * @throws BadInputException naming everything that cannot be used, by its line
   */
  static Edited read(Quote quote, String text) {
    EditSheet sheet = new EditSheet(quote);
    int number = 0;
    for (String line : text.split("\n", -1)) {
      sheet.line(++number, line.strip());
    }
    return sheet.edited();
  }

  private void line(int number, String text) {
    if (text.isEmpty() || text.startsWith("#")) {
      return;
    }
    Optional<Problem> plain = PlainText.refusal(place(number), text);
    if (plain.isPresent()) {
      problems.add(plain.get());
      return;
    }
    Optional<Mark> mark = Mark.of(text);
    if (mark.isPresent()) {
      marked(mark.get(), mark.get().behind(text));
    } else if (text.matches("\\[\\d{1,4}\\].*")) {
      group = Integer.parseInt(text.substring(1, text.indexOf(']')));
    } else {
      itemised(number, text);
    }
  }

  private void marked(Mark mark, String words) {
    switch (mark) {
      case REASON -> reason = words;
      case PRICE_REASON -> priceReason = words;
      case NOTE -> notes.add(words);
      case HEADING -> heading = words;
      case REMARK -> remarks.put(last, words);
    }
  }

  private void itemised(int number, String text) {
    String[] cells = text.split("\\|", 4);
    if (cells.length < 4) {
      problem(number, text, "number | quantity | price of one | item or text");
      return;
    }
    String quantity = cells[1].strip();
    if (!quantity.matches("[1-9]\\d{0,5}")) {
      problem(number, quantity, "a whole quantity of 1 or more; take the line out to drop it");
      return;
    }
    if (cells[0].strip().equals("+")) {
      String price = cells[2].strip();
      changes.add(
          new LineChange(
              Kind.ADD,
              quantity + " x " + cells[3].strip() + (price.isEmpty() ? "" : " @ " + price)));
      addedTo.add(group);
    } else {
      kept(number, cells[0].strip(), quantity, cells[2].strip());
    }
  }

  private void kept(int number, String position, String quantity, String price) {
    QuoteLine line = position.matches("\\d{1,5}") ? lines.get(Integer.parseInt(position)) : null;
    if (line == null || !seen.add(line.position())) {
      problem(number, position, "the number of a line of this quote, once, or + for a new one");
      return;
    }
    if (line.group() != group) {
      problem(number, position, "in its own group, " + line.group() + ": lines stay in theirs");
      return;
    }
    last = line.position();
    if (!heading.isEmpty()) {
      headings.put(last, heading);
      heading = "";
    }
    if (Integer.parseInt(quantity) != line.quantity()) {
      changes.add(new LineChange(Kind.QUANTITY, last + "=" + quantity));
    }
    if (!price.equals(price(line))) {
      changes.add(new LineChange(Kind.PRICE, last + "=" + price));
    }
  }

  private Edited edited() {
    if (reason.isEmpty()) {
      problems.add(Problem.of("sheet", "reason:", "why the quote is revised, behind reason:"));
    }
    if (addedTo.size() > 1) {
      problems.add(Problem.of("sheet", "+", "new lines in one group at a time"));
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    for (QuoteLine line : lines.values()) {
      if (!seen.contains(line.position())) {
        changes.add(new LineChange(Kind.DROP, "" + line.position()));
      } else {
        words(line);
      }
    }
    List<Integer> before = lines.keySet().stream().filter(seen::contains).toList();
    if (!List.copyOf(seen).equals(before)) {
      changes.add(
          new LineChange(
              Kind.ORDER, seen.stream().map(String::valueOf).collect(Collectors.joining(","))));
    }
    return new Edited(
        reason,
        new Changes(
            changes,
            Optional.empty(),
            Optional.empty(),
            notes,
            Optional.empty(),
            addedTo.stream().findFirst(),
            Optional.of(priceReason).filter(why -> !why.isEmpty())));
  }

  private void words(QuoteLine line) {
    String above = headings.getOrDefault(line.position(), "");
    if (!above.equals(quote.heading(line).orElse(""))) {
      changes.add(new LineChange(Kind.HEADING, line.position() + "=" + above));
    }
    String below = remarks.getOrDefault(line.position(), "");
    if (!below.equals(remark(quote, line).orElse(""))) {
      changes.add(new LineChange(Kind.REMARK, line.position() + "=" + below));
    }
  }

  private void problem(int number, String value, String allowed) {
    problems.add(Problem.of(place(number), value, allowed));
  }

  private static String place(int number) {
    return "sheet line " + number;
  }
}
