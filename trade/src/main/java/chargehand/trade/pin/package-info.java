/** Pins through shafts and hubs. */
@NullMarked
package chargehand.trade.pin;

import org.jspecify.annotations.NullMarked;
