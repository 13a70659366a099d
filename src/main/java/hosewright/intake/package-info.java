/**
 * Files that people bring: a dealer's tables as text or workbooks, in our columns or mapped from
 * their own, and jobs written down.
 *
 * <p>Hands on rows and answers and judges none of them. Begin with {@link DealerFiles}; {@link
 * JobFile} reads a job, {@link JobText} what it says.
 */
package hosewright.intake;
