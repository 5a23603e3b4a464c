package chargehand.part.check;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.InBore;
import chargehand.part.shape.Solid;

/** Whether two things cut into the wall of one bore run into each other where they should not. */
final class BoreMark {
    private BoreMark() {}

    /** A straight groove may run into a recess: that is how oil is led round. Two of a kind may not meet. */
    static boolean meet(InBore one, InBore other, Body.Turned body) {
        return switch (one) {
            case InBore.Recess first -> other instanceof InBore.Recess second && overlap(first, second);
            case InBore.Keyway keyway ->
                straight(keyway.around(), keyway.width().length(), other, body);
            case InBore.OilGroove groove ->
                straight(groove.around(), groove.width().length(), other, body);
        };
    }

    private static boolean overlap(InBore.Recess one, InBore.Recess other) {
        Length from = Length.most(one.from().length(), other.from().length());
        Length to = Length.least(end(one), end(other));
        return from.isLessThan(to);
    }

    private static Length end(InBore.Recess recess) {
        return recess.from().length().plus(recess.width().length());
    }

    private static boolean straight(Angle around, Length width, InBore other, Body.Turned body) {
        return switch (other) {
            case InBore.Recess recess -> false;
            case InBore.Keyway keyway ->
                isNear(around, width, keyway.around(), keyway.width().length(), radius(other, body));
            case InBore.OilGroove groove ->
                isNear(around, width, groove.around(), groove.width().length(), radius(other, body));
        };
    }

    private static Length radius(InBore feature, Body.Turned body) {
        return body.inside().stream()
                .filter(bore -> bore.name().equals(feature.bore()))
                .map((Bore bore) -> Solid.mouthDiameter(bore).half())
                .findFirst()
                .orElse(Length.ZERO);
    }

    private static boolean isNear(Angle one, Length width, Angle other, Length otherWidth, Length radius) {
        double apart = SurfaceMark.apart(one.degrees(), other.degrees());
        return radius.isPositive() && apart < SurfaceMark.angle(width, radius) + SurfaceMark.angle(otherWidth, radius);
    }
}
