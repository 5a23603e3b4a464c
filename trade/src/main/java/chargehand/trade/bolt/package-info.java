/** Bolts: what they carry, how tight they go, how deep they must be engaged. */
@NullMarked
package chargehand.trade.bolt;

import org.jspecify.annotations.NullMarked;
