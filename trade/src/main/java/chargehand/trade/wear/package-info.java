/** Worn parts measured: how oval and tapered they are, what cleans them up, and what is left then. */
@NullMarked
package chargehand.trade.wear;

import org.jspecify.annotations.NullMarked;
