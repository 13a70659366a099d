/**
 * How far the atmosphere pushes water up to a pump: what lift holds at all, what is left at the
 * intake of a line of suction hose, and what flow still comes. It knows pressures and losses and no
 * pump's own curve. {@link hosewright.hydraulics.suction.SuctionLine} is a line, {@link
 * hosewright.hydraulics.suction.Suction} the laws.
 */
package hosewright.hydraulics.suction;
