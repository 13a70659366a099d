/**
 * The laws of friction and the physical figures they rest on.
 *
 * <p>Knows one hose and the water in it, no line. Begin with {@link FrictionLaw}.
 */
package hosewright.hydraulics.law;
