/** Dividing a circle with a worm and hole plates: plain, compound, differential and angular indexing. */
@NullMarked
package chargehand.trade.dividing;

import org.jspecify.annotations.NullMarked;
