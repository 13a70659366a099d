/** Pricing a tender, which may take hours and goes on where it was stopped. */
package hosewright.desk.tender;
