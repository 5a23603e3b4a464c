/**
 * The method carried out again from the stock, as written: operation after operation is applied to the work, and every
 * holding, cut and setting is checked on the way. Nothing here knows how a method is searched for; start at
 * {@link chargehand.method.replay.Replay}.
 */
@NullMarked
package chargehand.method.replay;

import org.jspecify.annotations.NullMarked;
