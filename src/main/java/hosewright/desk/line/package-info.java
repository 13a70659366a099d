/** What is asked of a line for a job: its plan and reasons, other sizes, the flow it brings. */
package hosewright.desk.line;
