/** Holding work: how true it sits and how hard it is held. */
@NullMarked
package chargehand.trade.holding;

import org.jspecify.annotations.NullMarked;
