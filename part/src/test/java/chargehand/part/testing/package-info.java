/** Random valid parts for the tests of this and other modules; the same seed gives the same parts. */
@NullMarked
package chargehand.part.testing;

import org.jspecify.annotations.NullMarked;
