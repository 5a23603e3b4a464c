/** One request and how it stands: what is asked for, by whom, and the moves a job may make from request to door. */
@NullMarked
package chargehand.book.job;

import org.jspecify.annotations.NullMarked;
