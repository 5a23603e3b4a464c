/** Walls that hold pressure. */
@NullMarked
package chargehand.trade.vessel;

import org.jspecify.annotations.NullMarked;
