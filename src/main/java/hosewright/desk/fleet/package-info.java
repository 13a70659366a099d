/** What is done with an agency's hose: loaded, tested, retired, traced, budgeted. */
package hosewright.desk.fleet;
