/**
 * What a draughtsman writes that is more than letters: diameter and square signs, stacked limits and fractions, arrows, frames
 * for run-out, the projection and texture symbols. All are drawn as paths, so that they look the same everywhere.
 */
@NullMarked
package chargehand.drawing.sign;

import org.jspecify.annotations.NullMarked;
