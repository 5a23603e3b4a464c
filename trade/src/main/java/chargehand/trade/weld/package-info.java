/** Welds: their throat, stress and metal. */
@NullMarked
package chargehand.trade.weld;

import org.jspecify.annotations.NullMarked;
