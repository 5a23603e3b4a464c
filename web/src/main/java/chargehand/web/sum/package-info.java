/** Pages and JSON resources of the sums. */
@NullMarked
package chargehand.web.sum;

import org.jspecify.annotations.NullMarked;
