/** Keys and keyways. */
@NullMarked
package chargehand.trade.key;

import org.jspecify.annotations.NullMarked;
