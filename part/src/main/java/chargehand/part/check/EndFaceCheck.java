package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.End;
import chargehand.part.OnEnd;
import chargehand.part.shape.Profile;

/** Judges what lies across or in the middle of an end face: slots and centre holes. */
final class EndFaceCheck {
    private final Body.Turned body;
    private final Profile outside;
    private final Profile hollow;
    private final Findings findings;

    EndFaceCheck(Body.Turned body, Profile outside, Profile hollow, Findings findings) {
        this.body = body;
        this.outside = outside;
        this.hollow = hollow;
        this.findings = findings;
    }

    void slot(String path, OnEnd.Slot slot) {
        Length deep = slot.depth().length();
        if (deep.isMoreThan(body.length().minus(WallCheck.LEAST_WALL))) {
            findings.fault(
                    path + ".depth",
                    PartFault.SLOT_TOO_DEEP,
                    "This slot goes through the whole part, " + findings.say(body.length()) + " long, or nearly.");
            return;
        }
        Length bottom = slot.end().other().from(at(slot.end()), deep);
        Length least = outside.least(Length.least(at(slot.end()), bottom), Length.most(at(slot.end()), bottom));
        if (!slot.width().length().isLessThan(least.times(2))) {
            findings.fault(
                    path + ".slot",
                    PartFault.SLOT_TOO_WIDE,
                    "This slot is as wide as the end it crosses, " + findings.say(least.times(2)) + ".");
        }
    }

    void centre(String path, OnEnd.Centre centre) {
        Length face = face(outside, centre.end()).times(2);
        boolean second = body.onEnds().stream()
                .filter(other -> other instanceof OnEnd.Centre && other.end() == centre.end())
                .findFirst()
                .filter(first -> first.equals(centre))
                .isEmpty();
        if (face(hollow, centre.end()).isPositive()) {
            findings.fault(
                    path + ".end",
                    PartFault.CENTRE_PLACE,
                    "A bore opens in end " + centre.end() + ": there is no middle for a centre hole.");
        } else if (second) {
            findings.fault(path + ".end", PartFault.CENTRE_PLACE, "An end has one centre hole.");
        } else if (!centre.hole().mouth().plus(WallCheck.LEAST_WALL.times(2)).isLessThan(face)) {
            findings.fault(
                    path + ".centre",
                    PartFault.CENTRE_PLACE,
                    "This centre hole is " + findings.say(centre.hole().mouth()) + " wide in an end of "
                            + findings.say(face) + ": take a smaller one.");
        }
    }

    private Length at(End end) {
        return end == End.A ? Length.ZERO : body.length();
    }

    /** The radius of a profile at an end face. */
    private Length face(Profile profile, End end) {
        return end == End.A ? profile.radiusAfter(Length.ZERO) : profile.radiusBefore(body.length());
    }
}
