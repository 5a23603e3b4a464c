/**
 * The method as it is written down: stock, set-ups in order, operations with what they cut and how they are set. This is what
 * the search produces, what the replay reads, and what sheets and pages show; it holds no reasoning of its own.
 *
 * <p>Positions along the axis are those of the finished part: end A is 0 and end B the part's length, whichever way round
 * the work is held. Stock reaches below 0 and beyond the length. Diameters are always diameters, never radii.
 */
@NullMarked
package chargehand.method.plan;

import org.jspecify.annotations.NullMarked;
