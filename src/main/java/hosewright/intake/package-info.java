/**
 * Reads the files a dealer's own system hands over: separated text or workbooks, in our columns or
 * in the dealer's own by a mapping.
 */
package hosewright.intake;
