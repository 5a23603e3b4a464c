package chargehand.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/** Writes angles for people. Halves are rounded away from nought; every text reads back as an angle. */
public final class AngleText {
    private static final BigInteger SIXTY = BigInteger.valueOf(60);

    private AngleText() {}

    /** To the nearest minute of arc, as a compound slide is set: {@code 5° 30'}, {@code 30°}, {@code 0° 45'}. */
    public static String minutes(Angle angle) {
        BigInteger minutes = nearest(angle, 60);
        BigInteger[] parts = minutes.abs().divideAndRemainder(SIXTY);
        return sign(minutes) + parts[0] + "°" + step(parts[1], "'");
    }

    /** To the nearest second of arc, steps of nought left out at the end: {@code 5° 30' 15"}, {@code 5° 30'}. */
    public static String seconds(Angle angle) {
        BigInteger seconds = nearest(angle, 3600);
        BigInteger[] parts = seconds.abs().divideAndRemainder(SIXTY);
        BigInteger[] degrees = parts[0].divideAndRemainder(SIXTY);
        String minutes = parts[1].signum() == 0 ? step(degrees[1], "'") : " " + degrees[1] + "'";
        return sign(seconds) + degrees[0] + "°" + minutes + step(parts[1], "\"");
    }

    /** In degrees to at most so many decimals: {@code 5.5°}. */
    public static String degrees(Angle angle, int mostDecimals) {
        return Figures.atMost(mostDecimals, angle.degrees()) + "°";
    }

    private static BigInteger nearest(Angle angle, int partsPerDegree) {
        return BigDecimal.valueOf(angle.degrees())
                .multiply(BigDecimal.valueOf(partsPerDegree))
                .setScale(0, RoundingMode.HALF_UP)
                .toBigIntegerExact();
    }

    private static String sign(BigInteger parts) {
        return parts.signum() < 0 ? "-" : "";
    }

    private static String step(BigInteger count, String sign) {
        return count.signum() == 0 ? "" : " " + count + sign;
    }
}
