/** Whether a part will bear its load: stress, what is allowed, and how much is in hand. It computes; it never certifies. */
@NullMarked
package chargehand.trade.strength;

import org.jspecify.annotations.NullMarked;
