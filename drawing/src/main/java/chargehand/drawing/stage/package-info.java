/**
 * Pictures of work in its holding at one set-up: what it is like when the set-up is done, what it was like before, the
 * surfaces to cut marked, the holding in a quiet tint, and the few sizes that matter for setting.
 *
 * <p>Positions along the axis are the finished part's own: 0 at end A, negative or beyond the length where there is stock.
 * How the work came to be so is nothing to this package: it draws what it is told.
 */
@NullMarked
package chargehand.drawing.stage;

import org.jspecify.annotations.NullMarked;
