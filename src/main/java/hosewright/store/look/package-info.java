/**
 * What a database file of the embedded store would make of itself when it is opened, read without
 * opening it: H2 runs again whatever its file says made its tables, triggers and views.
 *
 * <p>Runs nothing of a file. Begin with {@link StoreLook}.
 */
package hosewright.store.look;
