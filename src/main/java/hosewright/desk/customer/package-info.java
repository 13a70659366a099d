/** What is done with customers: added, changed, listed, shown. */
package hosewright.desk.customer;
