/**
 * Reads quantities as the trade writes them ("400 ft", "7 bar", "2-1/2") and shows them in US or SI
 * units. Inside the program every number is in US customary units, named in the variable.
 */
package hosewright.measure;
