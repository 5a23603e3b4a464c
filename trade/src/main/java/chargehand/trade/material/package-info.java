/** The materials a small shop cuts: what they are called, how strong, heavy and springy they are, and how they cut. */
@NullMarked
package chargehand.trade.material;

import org.jspecify.annotations.NullMarked;
