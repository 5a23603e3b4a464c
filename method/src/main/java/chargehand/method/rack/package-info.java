/** The rack: bars, plates, offcuts and reclaimed pieces as they lie there, and how they are read from a file. */
@NullMarked
package chargehand.method.rack;

import org.jspecify.annotations.NullMarked;
