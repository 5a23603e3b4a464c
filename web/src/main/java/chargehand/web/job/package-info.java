/** Pages of the job book: the list, one request, one job. */
@NullMarked
package chargehand.web.job;

import org.jspecify.annotations.NullMarked;
