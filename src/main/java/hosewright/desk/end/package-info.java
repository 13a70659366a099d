/** What is asked of ends: which one it is, what it joins, what goes between two. */
package hosewright.desk.end;
