/**
 * What is handed on: a plan as a layout of legs and nodes, parts that know their role, water,
 * checks and a bill.
 *
 * <p>Decides nothing, and no reader has to look into a description. Begin with {@link LinePlan}.
 */
package hosewright.line.model;
