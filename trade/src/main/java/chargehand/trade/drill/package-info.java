/**
 * Twist drills by number, letter, fraction and millimetre, and which of them to drill a hole with before tapping it.
 */
@NullMarked
package chargehand.trade.drill;

import org.jspecify.annotations.NullMarked;
