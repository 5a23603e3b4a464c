/** The display list as SVG: real text, millimetres, the same bytes for the same picture. */
@NullMarked
package chargehand.drawing.svg;

import org.jspecify.annotations.NullMarked;
