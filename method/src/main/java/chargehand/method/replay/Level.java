package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Station;

/** How much of a profile lies level at one radius. */
final class Level {
    private Level() {}

    static Length of(Profile profile, Length radius, Length tolerance) {
        Length sum = Length.ZERO;
        for (int i = 1; i < profile.stations().size(); i++) {
            Station one = profile.stations().get(i - 1);
            Station other = profile.stations().get(i);
            if (one.radius().isWithin(tolerance, radius) && other.radius().isWithin(tolerance, radius)) {
                sum = sum.plus(other.at().minus(one.at()));
            }
        }
        return sum;
    }
}
