/**
 * What is asked where water divides: legs that begin where others end, each with a job of its own.
 * It knows names, lengths and wishes of legs, and what must hold between them; it knows no hose and
 * no fitting. {@link hosewright.job.layout.LayoutForm} reads a layout, {@link
 * hosewright.job.layout.LayoutJob} is one.
 */
package hosewright.job.layout;
