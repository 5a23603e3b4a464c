/** Angles set up with a sine bar and gauge blocks. */
@NullMarked
package chargehand.trade.sine;

import org.jspecify.annotations.NullMarked;
