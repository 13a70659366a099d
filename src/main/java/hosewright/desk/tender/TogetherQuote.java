package hosewright.desk.tender;

import hosewright.problem.BadInputException;
import hosewright.quote.ExtraLine;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import hosewright.quote.terms.Customers;
import hosewright.tender.TenderResult;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.Money;

/**
 * All rows of a tender as one quote: the groups of one row after those of another, priced at what
 * the whole quote has of each item.
 *
 * @param quote empty where no row can be laid
 * @param groupsOf the numbers of the groups of each row, by its line in the file
 */
record TogetherQuote(Optional<Quote> quote, Map<Long, Set<Integer>> groupsOf) {
  /** No paper of more groups can be read, and all their plans are held at once. */
  private static final int MOST_ROWS = 300;

  /** Stands for the line of a row where a quote is for all of them. */
  static final long WHOLE_FILE = 0;

  /**
   * Whether one quote can be kept at all.
   *
   * @throws BadInputException where no buyer is named, or there are too many rows
   */
  static void check(String customer, int rows, Customers customers) {
    if (customer.isEmpty()) {
      throw customers.noneNamed();
    }
    if (rows > MOST_ROWS) {
      throw new BadInputException(
          "one-quote",
          rows + " rows",
          "at most " + MOST_ROWS + " rows in one quote: split the file, or keep a quote for each");
    }
  }

  /** The groups of all rows, numbered on. */
  static List<Group> groups(Iterable<Sale> sales) {
    List<Group> groups = new ArrayList<>();
    for (Sale sale : sales) {
      for (Group group : sale.groups()) {
        groups.add(
            new Group(groups.size() + 1, heading(sale, group), group.jobYaml(), group.plan()));
      }
    }
    return groups;
  }

  /** Of several groups, each says which row it is of. */
  private static Group.Heading heading(Sale sale, Group group) {
    return sale.groups().size() == 1
        ? group.heading()
        : new Group.Heading(sale.title() + ": " + group.title(), group.count(), group.optional());
  }

  /** Lines in free text of all rows, in the groups as they are numbered on. */
  static List<ExtraLine> free(Iterable<Sale> sales) {
    List<ExtraLine> free = new ArrayList<>();
    int before = 0;
    for (Sale sale : sales) {
      for (ExtraLine line : sale.free()) {
        free.add(line.in(before + line.group()));
      }
      before += sale.groups().size();
    }
    return free;
  }

  /** The quote with where each row stands in it. */
  static TogetherQuote of(Quote quote, Map<Long, Sale> sales) {
    Map<Long, Set<Integer>> groupsOf = new HashMap<>();
    int number = 0;
    for (Map.Entry<Long, Sale> row : sales.entrySet()) {
      Set<Integer> groups = new HashSet<>();
      for (int i = 0; i < row.getValue().groups().size(); i++) {
        groups.add(++number);
      }
      groupsOf.put(row.getKey(), groups);
    }
    return new TogetherQuote(Optional.of(quote), groupsOf);
  }

  /** A row with what its goods come to in the quote; as it is where it stands in none. */
  TenderResult in(TenderResult row) {
    Set<Integer> groups = groupsOf.get(row.place().line());
    if (quote.isEmpty() || groups == null) {
      return row;
    }
    Money goods = Money.zero(quote.get().total().getCurrencyUnit());
    for (QuoteLine line : quote.get().lines()) {
      if (groups.contains(line.group())) {
        goods = goods.plus(line.price().extended());
      }
    }
    return row.quoted(quote.get().number(), goods);
  }
}
