/** Tapers: how steep, how large at either end, and how to set a lathe or a sine bar for them. */
@NullMarked
package chargehand.trade.taper;

import org.jspecify.annotations.NullMarked;
