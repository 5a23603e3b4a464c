package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.Edge;
import chargehand.part.check.SizeCheck.Kind;
import chargehand.part.shape.Solid;
import chargehand.part.shape.ToolRoom;
import chargehand.trade.thread.ScrewThread;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Judges the bores of a turned part, by themselves and beside each other. */
final class BoreCheck {
    /** Pitches that even a bottoming tap needs beyond the full thread (common practice). */
    private static final int LEAST_TAP_ROOM_PITCHES = 2;

    /** An inside thread shallower than this share of its full depth does not hold (common practice). */
    private static final double LEAST_ENGAGEMENT = 0.5;

    private final SizeCheck sizes;
    private final Findings findings;

    BoreCheck(SizeCheck sizes, Findings findings) {
        this.sizes = sizes;
        this.findings = findings;
    }

    /** Judges one bore by itself. */
    void judge(String path, Bore bore) {
        String key = path + "." + Paths.key(bore);
        depth(path, bore);
        new SectionCheck(sizes, findings).edge(path + ".mouth", mouth(bore));
        if (mouth(bore) instanceof Edge.WeldPreparation) {
            findings.fault(
                    path + ".mouth",
                    PartFault.WELD_EDGE,
                    "An edge is prepared for welding from the outside: write it at the section.");
        }
        switch (bore) {
            case Bore.Drilled drilled -> sizes.judge(key, drilled.diameter(), Kind.HOLE);
            case Bore.Bored bored -> sizes.judge(key, bored.diameter(), Kind.HOLE);
            case Bore.Reamed reamed -> sizes.judge(key, reamed.diameter(), Kind.HOLE);
            case Bore.Counterbored counterbored -> sizes.judge(key, counterbored.diameter(), Kind.HOLE);
            case Bore.Tapped tapped -> sizes.judge(key, tapped.thread().major());
            case Bore.Coned coned -> cone(path, coned);
        }
    }

    private void depth(String path, Bore bore) {
        if (bore.depth() instanceof Depth.Blind(var size) && !(bore instanceof Bore.Coned)) {
            sizes.judge(path + ".depth", size, Kind.EITHER);
        }
    }

    private void cone(String path, Bore.Coned coned) {
        sizes.judge(path + ".mouth", coned.mouth(), Kind.HOLE);
        sizes.judge(path + ".to", coned.to(), Kind.HOLE);
        if (!coned.to().length().isLessThan(coned.mouth().length())) {
            findings.fault(
                    path + ".to",
                    PartFault.CONE_NOT_NARROWING,
                    "A cone narrows inward: " + findings.say(coned.to().length()) + " is no smaller than its mouth, "
                            + findings.say(coned.mouth().length()) + ".");
        }
    }

    /** Judges all bores of a part together. */
    void judgeTogether(Body.Turned body) {
        List<Bore> bores = body.inside();
        for (int i = 0; i < bores.size(); i++) {
            Bore bore = bores.get(i);
            tooDeep(Paths.bore(i) + ".depth", bore, body.length());
            innerMouth(Paths.bore(i), bore, body);
            if (bore instanceof Bore.Tapped tapped) {
                tapped(Paths.bore(i), tapped, body);
            }
        }
    }

    /** Judges the edge at a mouth that lies at the bottom of a larger bore. */
    private void innerMouth(String path, Bore bore, Body.Turned body) {
        Optional<Bore> larger = largerBefore(bore, body);
        Edge edge = mouth(bore);
        Length reach = SectionCheck.reach(edge);
        Length begins = larger.map(other -> depth(other.depth(), body.length())).orElse(Length.ZERO);
        Length own = depth(bore.depth(), body.length());
        if (reach.isPositive() && begins.isLessThan(own) && begins.plus(reach).isMoreThan(own)) {
            tooLong(path, reach, own.minus(begins));
        }
        larger.map(other -> step(other, bore))
                .filter(step -> OutsideCheck.height(edge).isMoreThan(step))
                .ifPresent(step -> tooHigh(path, OutsideCheck.height(edge), step));
    }

    /** The deepest blind bore from the same end that is larger, at whose bottom a bore begins. */
    private static Optional<Bore> largerBefore(Bore bore, Body.Turned body) {
        return body.inside().stream()
                .filter(other -> other.from() == bore.from() && other.depth() instanceof Depth.Blind)
                .filter(other -> Solid.mouthDiameter(other).isMoreThan(Solid.mouthDiameter(bore)))
                .max(Comparator.comparing(other -> depth(other.depth(), body.length())));
    }

    /** How high a larger bore leaves the step to a smaller one; a cone may leave none. */
    private static Length step(Bore larger, Bore smaller) {
        Length bottom = larger instanceof Bore.Coned coned ? coned.to().length() : Solid.mouthDiameter(larger);
        return Length.most(bottom.minus(Solid.mouthDiameter(smaller)), Length.ZERO)
                .half();
    }

    private void tooHigh(String path, Length height, Length step) {
        findings.fault(
                path + ".mouth",
                PartFault.EDGE_HIGHER_THAN_STEP,
                "This edge is " + findings.say(height) + " high where the step to the larger bore leaves it "
                        + findings.say(step) + ".");
    }

    private static Edge mouth(Bore bore) {
        return switch (bore) {
            case Bore.Bored bored -> bored.mouth();
            case Bore.Reamed reamed -> reamed.mouth();
            case Bore.Counterbored counterbored -> counterbored.mouth();
            case Bore.Drilled drilled -> new Edge.Plain();
            case Bore.Tapped tapped -> new Edge.Plain();
            case Bore.Coned coned -> new Edge.Plain();
        };
    }

    private void tooLong(String path, Length reach, Length deep) {
        findings.fault(
                path + ".mouth",
                PartFault.EDGE_LONGER_THAN_SECTION,
                "This edge takes " + findings.say(reach) + " of a bore only " + findings.say(deep) + " deep.");
    }

    private void tooDeep(String path, Bore bore, Length length) {
        if (bore.depth() instanceof Depth.Blind(var size) && !size.length().isLessThan(length)) {
            findings.fault(
                    path,
                    PartFault.BORE_LONGER_THAN_PART,
                    findings.say(size.length()) + " deep is not less than the part is long, " + findings.say(length)
                            + ": write 'through: true' for a hole that goes through.");
        }
    }

    private void tapped(String path, Bore.Tapped tapped, Body.Turned body) {
        body.inside().stream()
                .filter(bore -> coversThread(bore, tapped, body.length()))
                .findFirst()
                .ifPresent(bore -> noMaterial(path, tapped, bore));
        if (tapped.depth() instanceof Depth.Blind(var thread)) {
            Length needed =
                    thread.length().plus(tapped.thread().pitch().length().times(LEAST_TAP_ROOM_PITCHES));
            ToolRoom.tappingHoles(tapped, body).stream()
                    .filter(hole -> depth(hole.depth(), body.length()).isLessThan(needed))
                    .findFirst()
                    .ifPresent(hole -> findings.fault(
                            path + ".depth",
                            PartFault.TAPPING_HOLE_TOO_SHORT,
                            "The drilled hole must go at least " + findings.say(needed)
                                    + " deep for this depth of full thread: the tap needs room for its lead."));
        }
    }

    private void noMaterial(String path, Bore.Tapped tapped, Bore bore) {
        findings.fault(
                path + ".tap",
                PartFault.NO_MATERIAL_FOR_THREAD,
                "'" + bore.name() + "' leaves too little to cut "
                        + tapped.thread().designation()
                        + " in: the hole before tapping measures about "
                        + findings.say(tapped.thread().minorInternal()) + ".");
    }

    /** Whether another bore takes away, over the whole thread, so much that it no longer holds. */
    private static boolean coversThread(Bore bore, Bore.Tapped tapped, Length length) {
        if (bore.equals(tapped)) {
            return false;
        }
        Length remains = remains(bore, tapped, length);
        return plainDiameter(bore).isMoreThan(mostBefore(tapped.thread()))
                && remains.isLessThan(tapped.thread().pitch().length());
    }

    /** How much of the thread's length another bore leaves alone. */
    private static Length remains(Bore bore, Bore.Tapped tapped, Length length) {
        Length thread = depth(tapped.depth(), length);
        Length depth = depth(bore.depth(), length);
        boolean fromSameEnd = bore.from() == tapped.from();
        Length reached = fromSameEnd ? depth : depth.minus(length.minus(thread));
        return Length.most(thread.minus(Length.most(reached, Length.ZERO)), Length.ZERO);
    }

    /** The widest hole in which the thread still has enough depth. */
    private static Length mostBefore(ScrewThread thread) {
        Length full = thread.major().minus(thread.minorInternal());
        return thread.major().minus(full.times(LEAST_ENGAGEMENT));
    }

    private static Length plainDiameter(Bore bore) {
        return switch (bore) {
            case Bore.Drilled drilled -> drilled.diameter().length();
            case Bore.Bored bored -> bored.diameter().length();
            case Bore.Reamed reamed -> reamed.diameter().length();
            case Bore.Counterbored counterbored -> counterbored.diameter().length();
            case Bore.Tapped tapped -> tapped.thread().major();
            case Bore.Coned coned -> coned.to().length();
        };
    }

    static Length depth(Depth depth, Length through) {
        return switch (depth) {
            case Depth.Through() -> through;
            case Depth.Blind(var size) -> size.length();
        };
    }
}
