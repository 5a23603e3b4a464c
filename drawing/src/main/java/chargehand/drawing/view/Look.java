package chargehand.drawing.view;

import chargehand.part.shape.Solid;

/**
 * A turned part as it is looked at.
 *
 * @param solid its shape
 * @param scale where it lies on paper
 * @param cut how much is shown cut
 */
public record Look(Solid solid, AxialScale scale, Cut cut) {}
