/**
 * Screw threads: the series in use on old and new machinery, how each is written, and every dimension computed from its
 * form. Start at {@link chargehand.trade.thread.ScrewThread}.
 */
@NullMarked
package chargehand.trade.thread;

import org.jspecify.annotations.NullMarked;
