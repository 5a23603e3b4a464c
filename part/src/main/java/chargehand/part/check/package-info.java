/**
 * Judges whether a described part can stand as a shape: sizes and limits, corners, threads, walls, features across,
 * ties. It knows no file; each finding names the place by the keys under which the part is written down.
 */
@NullMarked
package chargehand.part.check;

import org.jspecify.annotations.NullMarked;
