/**
 * Finding an item by what somebody remembers of it.
 *
 * <p>Knows what is written about each item, misspelt words, and sizes and ends however spelt. It
 * does not know prices or stock beyond whether there is any. Begin with {@link
 * hosewright.catalogue.find.ItemSearch}.
 */
package hosewright.catalogue.find;
