/**
 * Which shapes a line may have: which way round its hose lies, what divides and joins the water,
 * and which devices stand where. It knows the trade's rules of place and width, and nothing of
 * prices. {@link hosewright.line.shape.Topologies} is the way in.
 */
package hosewright.line.shape;
