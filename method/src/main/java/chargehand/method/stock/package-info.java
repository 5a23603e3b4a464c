/**
 * Choosing what to make a part from: which pieces on the rack it will come out of, how the length adds up, what the
 * material is fit for, and why the other pieces were passed over.
 *
 * <p>{@link chargehand.method.stock.StockChooser} asks of every piece in turn: will its material do ({@code Wanted}), is it
 * thick enough ({@code Across}), how is it cut up on these machines ({@code CuttingUp}). A piece that passes becomes one
 * {@link chargehand.method.stock.Candidate} for each way of cutting it up.
 */
@NullMarked
package chargehand.method.stock;

import org.jspecify.annotations.NullMarked;
