/**
 * The mechanism of the sums: how a calculation is declared once and then asked from the page, the command, the JSON-lines
 * stream and the HTTP resource. It knows no trade rule; each subject package declares its own sums with it.
 */
@NullMarked
package chargehand.trade.sum;

import org.jspecify.annotations.NullMarked;
