package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.End;
import chargehand.part.HoleCircle;
import chargehand.part.OnEnd;
import chargehand.part.check.SizeCheck.Kind;
import chargehand.part.shape.DrillPoint;
import chargehand.part.shape.Profile;
import chargehand.part.shape.RingMetal;
import chargehand.part.shape.Solid;
import chargehand.part.shape.ToolRoom;
import java.util.List;
import java.util.Optional;

/** Judges what is made into the faces of a turned part. */
final class OnEndCheck {
    private static final int MOST_HOLES = 100;

    private final Body.Turned body;
    private final Findings findings;
    private final Profile outside;
    private final Profile hollow;

    OnEndCheck(Body.Turned body, Solid solid, Findings findings) {
        this.body = body;
        this.findings = findings;
        this.outside = solid.outerAtLeast();
        this.hollow = solid.hollowAtMost();
    }

    /** Judges the sizes of one thing by themselves. */
    static void judge(String path, OnEnd feature, SizeCheck sizes, Findings findings) {
        String key = path + "." + Paths.key(feature);
        switch (feature) {
            case OnEnd.Drilled drilled -> {
                sizes.judge(key, drilled.diameter(), Kind.HOLE);
                circle(path, drilled.circle(), drilled.depth(), sizes, findings);
            }
            case OnEnd.Tapped tapped -> {
                sizes.judge(key, tapped.thread().major());
                circle(path, tapped.circle(), tapped.depth(), sizes, findings);
            }
            case OnEnd.Slot slot -> {
                sizes.judge(key, slot.width(), Kind.HOLE);
                sizes.judge(path + ".depth", slot.depth(), Kind.EITHER);
            }
            case OnEnd.Centre centre -> {}
        }
    }

    private static void circle(String path, HoleCircle circle, Depth depth, SizeCheck sizes, Findings findings) {
        sizes.judge(path + ".circle", circle.diameter(), Kind.EITHER);
        if (circle.count() < 1 || circle.count() > MOST_HOLES) {
            findings.fault(
                    path + ".count",
                    PartFault.HOLE_COUNT,
                    "A circle has from 1 to " + MOST_HOLES + " holes, not " + circle.count() + ".");
        }
        if (depth instanceof Depth.Blind(var size)) {
            sizes.judge(path + ".depth", size, Kind.EITHER);
        }
    }

    /** Judges all of them on a part whose outside and inside are sound. */
    void judgeTogether() {
        List<OnEnd> all = body.onEnds();
        var faces = new EndFaceCheck(body, outside, hollow, findings);
        for (int i = 0; i < all.size(); i++) {
            String path = Paths.onEnd(i);
            switch (all.get(i)) {
                case OnEnd.Slot slot -> faces.slot(path, slot);
                case OnEnd.Centre centre -> faces.centre(path, centre);
                case OnEnd.Drilled drilled -> ring(path, ring(drilled), all.subList(0, i));
                case OnEnd.Tapped tapped -> ring(path, ring(tapped), all.subList(0, i));
            }
        }
    }

    private void ring(String path, Ring ring, List<OnEnd> before) {
        spacing(path, ring);
        Optional<RingMetal> metal = RingMetal.find(outside, ring.end, ring.reach());
        if (metal.isPresent()) {
            bottom(path, ring, metal.get());
        } else {
            findings.fault(
                    path + ".circle",
                    PartFault.CIRCLE_OFF_FACE,
                    "No face seen from end " + ring.end + " reaches out to "
                            + findings.say(ring.reach().times(2)) + ", which holes on this circle need.");
        }
        before.stream().flatMap(other -> findRing(other).stream()).forEach(other -> apart(path, ring, other));
    }

    private static Optional<Ring> findRing(OnEnd feature) {
        return switch (feature) {
            case OnEnd.Drilled drilled -> Optional.of(ring(drilled));
            case OnEnd.Tapped tapped -> Optional.of(ring(tapped));
            case OnEnd.Slot slot -> Optional.empty();
            case OnEnd.Centre centre -> Optional.empty();
        };
    }

    /**
     * Holes on a circle as they stand when they are done.
     *
     * @param diameter of each hole, over the roots of a thread
     * @param beyond what a blind one needs below its depth
     */
    private record Ring(OnEnd feature, End end, HoleCircle circle, Depth depth, Length diameter, Length beyond) {
        private Length reach() {
            return circle.diameter().length().plus(diameter).half().plus(WallCheck.LEAST_WALL);
        }

        private Length nearest() {
            return circle.diameter().length().minus(diameter).half().minus(WallCheck.LEAST_WALL);
        }

        private double angle(int hole) {
            return circle.around().inRadians() + 2 * Math.PI * hole / circle.count();
        }
    }

    private static Ring ring(OnEnd.Drilled drilled) {
        Length diameter = drilled.diameter().length();
        return new Ring(
                drilled, drilled.end(), drilled.circle(), drilled.depth(), diameter, DrillPoint.height(diameter));
    }

    private static Ring ring(OnEnd.Tapped tapped) {
        Length beyond = ToolRoom.forTap(tapped.thread())
                .plus(DrillPoint.height(tapped.thread().minorInternal()));
        return new Ring(
                tapped,
                tapped.end(),
                tapped.circle(),
                tapped.depth(),
                tapped.thread().majorInternal(),
                beyond);
    }

    private void spacing(String path, Ring ring) {
        double chord = ring.circle.diameter().length().mm() * Math.sin(Math.PI / ring.circle.count());
        boolean tight =
                ring.circle.count() > 1 && Length.mm(chord).minus(ring.diameter).isLessThan(WallCheck.LEAST_WALL);
        if (tight) {
            findings.fault(
                    path + ".count",
                    PartFault.CIRCLE_OVERLAP,
                    ring.circle.count() + " such holes leave less than " + findings.say(WallCheck.LEAST_WALL)
                            + " between them on this circle.");
        }
    }

    private void bottom(String path, Ring ring, RingMetal metal) {
        Length deep = switch (ring.depth) {
            case Depth.Through() -> metal.thickness();
            case Depth.Blind(var size) -> size.length().plus(ring.beyond);
        };
        boolean comesOut = ring.depth instanceof Depth.Blind
                && deep.isMoreThan(metal.thickness().minus(WallCheck.LEAST_WALL));
        RingMetal taken = metal.taken(ring.end, deep);
        if (comesOut) {
            findings.fault(
                    path + ".depth",
                    PartFault.BREAKS_THROUGH,
                    "With the point and the room its tool needs, each hole goes " + findings.say(deep)
                            + " into metal " + findings.say(metal.thickness())
                            + " thick: make it less deep, or go through.");
        } else if (hollow.most(taken.from(), taken.to()).isMoreThan(ring.nearest())) {
            findings.fault(
                    path + ".circle",
                    PartFault.WALL_TOO_THIN,
                    "These holes run into the bore, or leave less than " + findings.say(WallCheck.LEAST_WALL)
                            + " of wall towards it.");
        }
    }

    private void apart(String path, Ring ring, Ring other) {
        if (ring.end == other.end && nearest(ring, other) < WallCheck.LEAST_WALL.mm()) {
            findings.fault(
                    path + "." + Paths.key(ring.feature),
                    PartFault.CIRCLE_OVERLAP,
                    "These run into '" + other.feature.name() + "', or leave less than "
                            + findings.say(WallCheck.LEAST_WALL) + " between them.");
        }
    }

    /** The least wall between holes of two circles (mm), below nought where they run into each other. */
    private static double nearest(Ring one, Ring other) {
        double a = one.circle.diameter().length().half().mm();
        double b = other.circle.diameter().length().half().mm();
        double least = Double.MAX_VALUE;
        for (int i = 0; i < one.circle.count(); i++) {
            for (int j = 0; j < other.circle.count(); j++) {
                double turn = one.angle(i) - other.angle(j);
                least = Math.min(least, a * a + b * b - 2 * a * b * Math.cos(turn));
            }
        }
        double holes = one.diameter.plus(other.diameter).half().mm();
        return Math.sqrt(Math.max(0, least)) - holes;
    }
}
