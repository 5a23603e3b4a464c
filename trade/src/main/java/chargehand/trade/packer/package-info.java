/** Setting a valve by packers: what to make next from the tests so far, and when to stop. */
@NullMarked
package chargehand.trade.packer;

import org.jspecify.annotations.NullMarked;
