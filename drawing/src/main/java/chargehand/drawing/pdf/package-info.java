/** The display list as PDF: vectors, real text in the embedded font, the same bytes for the same pages. */
@NullMarked
package chargehand.drawing.pdf;

import org.jspecify.annotations.NullMarked;
