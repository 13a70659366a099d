/**
 * An agency's hose: what it owns, how it was tested, why each section left service, how long hose
 * lasts, and what replacing it will cost.
 */
package hosewright.fleet;
