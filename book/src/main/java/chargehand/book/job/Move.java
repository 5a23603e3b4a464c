package chargehand.book.job;

import chargehand.book.Signed;

/**
 * One move of a job from one stage to another, kept for good.
 *
 * @param note why, or what it waits for; empty where nothing was said
 */
public record Move(JobNumber job, Stage from, Stage to, String note, Signed by) {}
