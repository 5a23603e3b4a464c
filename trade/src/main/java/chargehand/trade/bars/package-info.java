/** Cutting lists: which pieces to cut from which bars, so that least is bought and least is left. */
@NullMarked
package chargehand.trade.bars;

import org.jspecify.annotations.NullMarked;
