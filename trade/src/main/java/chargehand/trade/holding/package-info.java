/** Holding toothed and flatted work: how true it can sit in a chuck, and the bush that holds it where it cannot. */
@NullMarked
package chargehand.trade.holding;

import org.jspecify.annotations.NullMarked;
