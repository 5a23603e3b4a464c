/** What pieces of metal weigh. */
@NullMarked
package chargehand.trade.weight;

import org.jspecify.annotations.NullMarked;
