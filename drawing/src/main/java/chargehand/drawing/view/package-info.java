/**
 * The views of a part: its outline as seen or cut, threads, flats, holes and hatching, without sizes.
 *
 * <p>A view is laid out round its own origin: for a turned part the axis at y = 0 with end A at x = 0, running to the right.
 */
@NullMarked
package chargehand.drawing.view;

import org.jspecify.annotations.NullMarked;
