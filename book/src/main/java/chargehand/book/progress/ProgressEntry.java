package chargehand.book.progress;

import chargehand.book.Signed;
import chargehand.book.job.JobNumber;

/**
 * One line of a job's progress.
 *
 * @param job in hand
 * @param method the number of the planning it is made by
 * @param number counts the job's entries, from 1
 * @param deed what was done
 * @param by who did it and when
 */
public record ProgressEntry(JobNumber job, int method, int number, Deed deed, Signed by) {}
