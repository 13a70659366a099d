/** What is done with the books themselves: found, backed up, put back, moved. */
package hosewright.desk.data;
