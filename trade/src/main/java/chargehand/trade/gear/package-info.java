/** Spur wheels with involute teeth: their sizes, how they are measured, which old wheel it was, and racks. */
@NullMarked
package chargehand.trade.gear;

import org.jspecify.annotations.NullMarked;
