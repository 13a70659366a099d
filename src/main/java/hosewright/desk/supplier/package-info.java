/**
 * Deeds with suppliers: ask them for what a quote lacks, and compare what they answer.
 *
 * <p>One class, one deed, one transaction; no shell, no printing. Begin with the class named for
 * the deed.
 */
package hosewright.desk.supplier;
