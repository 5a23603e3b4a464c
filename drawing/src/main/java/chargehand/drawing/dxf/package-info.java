/**
 * The display list as DXF for release 12, the form that most drawing programs read: the thing at full size round zero, sheet
 * and lettering enlarged to go with it, hatching and dimensions as plain lines and words, the same bytes for the same sheet.
 */
@NullMarked
package chargehand.drawing.dxf;

import org.jspecify.annotations.NullMarked;
