/**
 * Drawings: an end, a joint, a line, the pressure along it, the strip that is laid to a thread.
 *
 * <p>Shows plans and ends and works nothing out. Begin with {@link LineDrawing}.
 */
package hosewright.paper.drawing;
