/** Pages of a part's drawing: its file, its faults and the drawing itself, while it is written. */
@NullMarked
package chargehand.web.drawing;

import org.jspecify.annotations.NullMarked;
