/**
 * Says why a line won, why others lost, and what would do where none passes.
 *
 * <p>Whatever is advised was planned first; nothing is chosen here. Begin with {@link ReasonWriter}
 * and {@link Remedies}.
 */
package hosewright.line.explain;
