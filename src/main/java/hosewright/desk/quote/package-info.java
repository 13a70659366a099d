/** What is done with quotes: made, revised, issued, decided on, asked for, shown. */
package hosewright.desk.quote;
