/**
 * Ends of hose and fittings: how they are written, measured and put together.
 *
 * <p>Pure knowledge over tables of facts; nothing here reads a clock, a file of the user or a
 * store.
 */
package hosewright.thread;
