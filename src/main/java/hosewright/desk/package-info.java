/**
 * What is done with the dealer's books, whatever the door: one class, one deed, one transaction. It
 * knows no shell and prints nothing; a door hands it what is asked and shows what came of it.
 */
package hosewright.desk;
