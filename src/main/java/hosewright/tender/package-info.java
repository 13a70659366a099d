/** Many jobs priced at once: the rows of a tender, each answered on its own and kept in order. */
package hosewright.tender;
