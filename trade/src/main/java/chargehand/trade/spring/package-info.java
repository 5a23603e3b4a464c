/** Helical springs: rate, stress, travel. */
@NullMarked
package chargehand.trade.spring;

import org.jspecify.annotations.NullMarked;
