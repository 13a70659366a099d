/**
 * An agency's hose on record: every section, what was done to it, and where it stands.
 *
 * <p>Knows limits and outlets of one agency, no prices. Begin with {@link SectionLife}.
 */
package hosewright.fleet.record;
