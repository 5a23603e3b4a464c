/** The drawing sheet: frame, title block, notes, scale, and the part's views with their sizes laid out on it. */
@NullMarked
package chargehand.drawing.sheet;

import org.jspecify.annotations.NullMarked;
