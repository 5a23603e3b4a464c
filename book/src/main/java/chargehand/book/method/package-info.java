/** The methods found for a job, each with what it was worked out from and how its replay ended. */
@NullMarked
package chargehand.book.method;

import org.jspecify.annotations.NullMarked;
