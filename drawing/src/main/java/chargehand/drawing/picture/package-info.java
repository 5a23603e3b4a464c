/**
 * One display list for everything that is drawn: marks in millimetres on paper, with named line styles and colours by role.
 * The writers to SVG, PDF and DXF draw the same list, so they cannot differ.
 *
 * <p>The frame everywhere: x to the right, y down, from the upper left corner of the paper.
 */
@NullMarked
package chargehand.drawing.picture;

import org.jspecify.annotations.NullMarked;
