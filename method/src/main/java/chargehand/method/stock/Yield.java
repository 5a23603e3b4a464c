package chargehand.method.stock;

import chargehand.measure.Length;
import java.util.Optional;

/**
 * What comes out of a piece of stock.
 *
 * @param perLength pieces from one length as it lies on the rack, at least one
 * @param lengths how many such lengths the count needs
 * @param blank the length of one blank, facing and stub included
 * @param perPiece the bar that one piece takes, the slot to the next included
 * @param left what is left of the last length that is cut into
 * @param turnedAway how much of the metal used becomes swarf or scrap, outside shape only: 0 nothing, towards 1 nearly all
 * @param worthLeft what is left in the shop's money; empty where price or density is not known
 */
public record Yield(
        int perLength,
        int lengths,
        Length blank,
        Length perPiece,
        Length left,
        double turnedAway,
        Optional<Double> worthLeft) {}
