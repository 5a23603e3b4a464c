/** Chances, as far as readings need them. No trade rule lives here. */
@NullMarked
package chargehand.trade.chance;

import org.jspecify.annotations.NullMarked;
