/** Press and shrink fits: the grip they give and what it does to hub and shaft. */
@NullMarked
package chargehand.trade.press;

import org.jspecify.annotations.NullMarked;
