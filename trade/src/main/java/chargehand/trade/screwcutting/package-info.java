/** Cutting a screw in the lathe: when to close the nut, how to take the cuts. */
@NullMarked
package chargehand.trade.screwcutting;

import org.jspecify.annotations.NullMarked;
