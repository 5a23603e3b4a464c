package chargehand.part.yaml;

import chargehand.measure.Angle;
import java.math.BigDecimal;

/** Angles with every figure they have, so that they read back the same. */
final class AngleFigures {
    private AngleFigures() {}

    static String exact(Angle angle) {
        BigDecimal degrees = BigDecimal.valueOf(angle.degrees()).stripTrailingZeros();
        return (degrees.scale() < 0 ? degrees.setScale(0) : degrees).toPlainString() + "°";
    }
}
