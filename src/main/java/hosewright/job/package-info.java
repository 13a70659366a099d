/**
 * What is asked: where a line starts and ends, what it must bring, and what its buyer insists on.
 *
 * <p>Knows no hose that is sold and no plan. Begin with {@link Job}; {@link JobForm} reads one from
 * answers.
 */
package hosewright.job;
