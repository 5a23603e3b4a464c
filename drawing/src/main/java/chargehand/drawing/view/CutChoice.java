package chargehand.drawing.view;

import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.Section;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import java.util.List;

/**
 * Chooses the cut that shows a turned part best (drawing-office practice): a solid one from outside, narrow bores that end
 * within it broken out, a bored part with nothing but a plain outside cut altogether, any other one cut by half.
 */
public final class CutChoice {
    /** A bore wider than this part of the outside round it leaves too little round a break-out. */
    private static final double SLENDER = 0.6;

    /** Bores that together go further than this part of the length are better shown all along. */
    private static final double SHORT = 0.75;

    private CutChoice() {}

    public static Cut of(Body.Turned body) {
        if (body.inside().isEmpty()) {
            return Cut.NONE;
        }
        if (body.inside().stream().allMatch(CutChoice::endsWithin) && leavesMuchWhole(Solid.of(body))) {
            return Cut.LOCAL;
        }
        return isPlainOutside(body) ? Cut.FULL : Cut.HALF;
    }

    private static boolean endsWithin(Bore bore) {
        return bore.depth() instanceof Depth.Blind && !(bore instanceof Bore.Coned);
    }

    private static boolean leavesMuchWhole(Solid solid) {
        List<Station> hollow = solid.innerAtMost().stations();
        Profile outside = solid.outerAtLeast();
        double deep = 0;
        for (int i = 1; i < hollow.size(); i++) {
            Station before = hollow.get(i - 1);
            Station after = hollow.get(i);
            if (before.radius().isPositive() || after.radius().isPositive()) {
                deep += after.at().minus(before.at()).mm();
            }
        }
        boolean slender = hollow.stream()
                .allMatch(station -> station.radius().mm()
                        <= SLENDER * outside.least(station.at(), station.at()).mm());
        return slender && deep <= SHORT * solid.length().mm();
    }

    /** Whether there is nothing to see on the outside but one cylinder, every hole across it in one plane. */
    private static boolean isPlainOutside(Body.Turned body) {
        List<Across> across = body.across();
        return body.outside().size() == 1
                && body.outside().getFirst() instanceof Section.Round
                && across.stream().allMatch(feature -> isInPlane(feature, across.getFirst()));
    }

    private static boolean isInPlane(Across feature, Across first) {
        Bearing bearing = Bearing.of(feature, Bearing.up(first));
        return feature instanceof Across.CrossHole && (bearing.isUp() || bearing.isDown());
    }
}
