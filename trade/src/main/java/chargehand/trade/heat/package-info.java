/** What heat does to sizes. */
@NullMarked
package chargehand.trade.heat;

import org.jspecify.annotations.NullMarked;
