/**
 * The nominal shape that a described turned part stands for: profiles of radius along the axis, in whole nanometres, and
 * the solid they bound. Positions run from end A, which is 0, towards end B.
 */
@NullMarked
package chargehand.part.shape;

import org.jspecify.annotations.NullMarked;
