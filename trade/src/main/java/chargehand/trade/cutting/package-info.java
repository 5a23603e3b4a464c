/** Cutting: speeds, feeds, passes, force, power, finish and time, on a machine's own steps. */
@NullMarked
package chargehand.trade.cutting;

import org.jspecify.annotations.NullMarked;
