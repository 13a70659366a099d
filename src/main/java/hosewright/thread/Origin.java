package hosewright.thread;

/**
 * Who says what is held about a thread or a coupling.
 *
 * @param standard the standard that sets it; or empty
 * @param table the table in that standard; or empty
 * @param confidence how sure the figures are
 * @param source where the figures were read
 * @param note what else to know
 */
public record Origin(
    String standard, String table, String confidence, String source, String note) {}
