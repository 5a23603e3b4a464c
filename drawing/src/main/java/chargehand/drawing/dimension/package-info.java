/**
 * Sizes put on views by themselves: which lengths define the part, how they are written, and where they stand so that
 * nothing lies on anything else.
 */
@NullMarked
package chargehand.drawing.dimension;

import org.jspecify.annotations.NullMarked;
