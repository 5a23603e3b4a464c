/** Measuring what has been made: threads over wires. */
@NullMarked
package chargehand.trade.gauging;

import org.jspecify.annotations.NullMarked;
