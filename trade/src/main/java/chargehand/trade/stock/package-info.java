/** Stock: how much larger the rough piece must be than the finished part. */
@NullMarked
package chargehand.trade.stock;

import org.jspecify.annotations.NullMarked;
