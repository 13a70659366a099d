package hosewright.desk.tender;

import hosewright.quote.ExtraLine;
import hosewright.quote.Group;
import hosewright.quote.terms.Customer;
import java.time.LocalDate;
import java.util.List;

/**
 * What a row of a tender sells once it is quoted.
 *
 * @param groups numbered from 1; one for most rows
 * @param free lines in free text, in the groups they belong to
 */
record Sale(
    String title, Customer customer, LocalDate date, List<Group> groups, List<ExtraLine> free) {}
