/**
 * Ways from one end to another by adapters: which there are, the best first.
 *
 * <p>Knows ends and what mates, neither water nor checks. Begin with {@link BridgeGraph}.
 */
package hosewright.line.bridge;
