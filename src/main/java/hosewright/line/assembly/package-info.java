/**
 * Lines as they are put together: topologies, sections laid, bridges and devices in their places,
 * and the joints between them.
 *
 * <p>Holds what is looked at, chooses nothing and hands nothing on. Begin with {@link Assembly}.
 */
package hosewright.line.assembly;
