/** What is done with the catalogue: checked, loaded, searched, shown. */
package hosewright.desk.catalogue;
