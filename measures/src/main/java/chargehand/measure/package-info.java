/**
 * Sizes as the trade writes them: typed quantities, limits, and the reading and writing of every notation in use on old
 * machines. No trade rule lives here: a thread's depth or a drill's number series belongs to the {@code trade} module.
 */
@NullMarked
package chargehand.measure;

import org.jspecify.annotations.NullMarked;
