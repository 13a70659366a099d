/**
 * What pressure a flow needs at the source of a line, and what flow a source brings.
 *
 * <p>Knows elements that lose and give pressure, not hose that is bought. Begin with {@link
 * LineHydraulics}.
 */
package hosewright.hydraulics;
