/**
 * Water in a hose line: friction, supply, demand, elevation, fittings; what pressure a flow needs
 * and what flow a source brings. Pure functions over records, US customary units, water only. Every
 * number that leaves the package is finite: a record refuses, at construction, what could make it
 * otherwise.
 *
 * <p>Results are planning figures. Local codes, the makers' instructions and a licensed engineer
 * decide where someone could be hurt.
 */
package hosewright.hydraulics;
