/**
 * The questions that lead to a job: each with what is usual, what may be answered and how an answer
 * is read, and what its words mean.
 *
 * <p>Knows neither who is asked nor what comes of the answers. Begin with {@link JobField}.
 */
package hosewright.job.question;
