package chargehand.book.job;

/**
 * A job as the job book lists it.
 *
 * @param job the job
 * @param part the title of its part; empty before it is drawn without fault
 * @param drawn whether the latest drawing of its part is without fault
 * @param planned whether the latest planning found a method
 */
public record JobLine(Job job, String part, boolean drawn, boolean planned) {}
