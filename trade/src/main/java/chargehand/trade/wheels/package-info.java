/** Change wheels: which trains, from the wheels a shop owns, make a lathe cut a given pitch, and how near they come. */
@NullMarked
package chargehand.trade.wheels;

import org.jspecify.annotations.NullMarked;
