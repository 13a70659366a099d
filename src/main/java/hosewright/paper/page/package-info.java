/**
 * What every PDF and picture is made of, and papers written whole or not at all.
 *
 * <p>Knows no trade. Begin with {@link Export}; {@link Picture} is drawn once and shown anywhere.
 */
package hosewright.paper.page;
