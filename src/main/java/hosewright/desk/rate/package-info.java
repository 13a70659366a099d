/** What is done with the table of what other currencies are worth: set and listed. */
package hosewright.desk.rate;
