/**
 * What is to be made: a turned part described by sections along its axis, bores and cross features, or a block with holes.
 * How it is read from a file, checked, drawn or made lies elsewhere.
 *
 * <p>Positions along the axis are measured from end A, which is 0, towards end B, which is the part's length.
 */
@NullMarked
package chargehand.part;

import org.jspecify.annotations.NullMarked;
