package hosewright.desk.quote;

import java.util.Optional;

/**
 * What is asked for a further revision of the same job.
 *
 * @param number the latest revision of a quote
 * @param reason why it is made
 * @param termsFile name of a text file of terms of sale; without it the dealer's own, else those of
 *     the revision before
 * @param by who makes it
 */
public record FurtherRevision(
    String number, String reason, Optional<String> termsFile, String by) {}
