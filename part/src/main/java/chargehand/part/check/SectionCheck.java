package chargehand.part.check;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.part.Edge;
import chargehand.part.Section;
import chargehand.part.Stretch;
import chargehand.part.check.SizeCheck.Kind;
import chargehand.trade.thread.ScrewThread;

/** Judges one outside section by itself. */
final class SectionCheck {
    private static final Angle STEEPEST_CONE = Angle.degrees(80);
    private static final int FEWEST_SIDES = 3;
    private static final int MOST_SIDES = 12;

    /** The bevels of butt welds (degrees to the face), wide of what ISO 9692-1 recommends. */
    private static final double LEAST_BEVEL = 5;

    private static final double MOST_BEVEL = 60;

    /** Pitches that a knurled diameter has at the least, so that the wheels do not crush it (common practice). */
    private static final int FEWEST_PITCHES = 4;

    private final SizeCheck sizes;
    private final Findings findings;

    SectionCheck(SizeCheck sizes, Findings findings) {
        this.sizes = sizes;
        this.findings = findings;
    }

    void judge(String path, Section section) {
        stretch(path, section.stretch());
        switch (section) {
            case Section.Round round -> sizes.judge(path + ".round", round.diameter(), Kind.SHAFT);
            case Section.Groove groove -> sizes.judge(path + ".groove", groove.diameter(), Kind.SHAFT);
            case Section.Cone cone -> cone(path + ".cone", cone);
            case Section.Polygon polygon -> polygon(path, polygon);
            case Section.Threaded threaded -> thread(path, threaded);
            case Section.Toothed toothed -> new TeethCheck(sizes, findings).judge(path, toothed);
            case Section.Knurled knurled -> knurl(path, knurled);
            case Section.Curved curved -> new CurveCheck(sizes, findings).judge(path, curved);
        }
    }

    private void knurl(String path, Section.Knurled knurled) {
        sizes.judge(path + ".knurl", knurled.diameter(), Kind.SHAFT);
        Length pitch = knurled.pitch().length();
        if (!KnurlPitches.all().contains(pitch)) {
            findings.fault(
                    path + ".pitch",
                    PartFault.KNURL_PITCH,
                    "Knurls are rolled at a pitch of " + KnurlPitches.text() + " (DIN 82), not " + findings.say(pitch)
                            + ".");
        } else if (knurled.diameter().length().isLessThan(pitch.times(FEWEST_PITCHES))) {
            findings.fault(
                    path + ".pitch",
                    PartFault.KNURL_PITCH,
                    "This pitch is too coarse for so thin a grip: take a finer one.");
        }
    }

    private void stretch(String path, Stretch stretch) {
        stretch.was().ifPresent(was -> sizes.judge(path + ".was", was, Kind.SHAFT));
        sizes.judge(path + ".length", stretch.length(), Kind.EITHER);
        edge(path + ".at-a", stretch.atA());
        edge(path + ".at-b", stretch.atB());
        Length edges = reach(stretch.atA()).plus(reach(stretch.atB()));
        Length length = stretch.length().length();
        if (edges.isMoreThan(length) && SizeCheck.isMakeable(length)) {
            findings.fault(
                    path,
                    PartFault.EDGE_LONGER_THAN_SECTION,
                    "The edges take " + findings.say(edges) + " of a section only " + findings.say(length) + " long.");
        }
    }

    void edge(String path, Edge edge) {
        switch (edge) {
            case Edge.Plain() -> {}
            case Edge.Radius(var radius) -> sizes.judge(path, radius.length());
            case Edge.WeldPreparation(var joint, var depth, var angle, var gap) -> {
                sizes.judge(path, depth.length());
                gap.ifPresent(size -> sizes.judge(path, size.length()));
                if (!(angle.degrees() >= LEAST_BEVEL && angle.degrees() <= MOST_BEVEL)) {
                    findings.fault(
                            path,
                            PartFault.EDGE_ANGLE,
                            "The bevel of a weld stands between 5° and 60° to the face, as in weld V 6 mm x 30°.");
                }
            }
            case Edge.Chamfer(var length, var angle) -> {
                sizes.judge(path, length.length());
                if (!(angle.degrees() > 0 && angle.degrees() < 90)) {
                    findings.fault(
                            path,
                            PartFault.EDGE_ANGLE,
                            "A chamfer lies between 0° and 90° to the axis, as in chamfer 1 mm x 30°.");
                }
            }
        }
    }

    /** How far along its section an edge reaches; nothing where its size is refused anyway. */
    static Length reach(Edge edge) {
        Length reach = switch (edge) {
            case Edge.Plain() -> Length.ZERO;
            case Edge.Chamfer(var length, var angle) -> length.length();
            case Edge.Radius(var radius) -> radius.length();
            case Edge.WeldPreparation prepared ->
                prepared.angle().degrees() <= MOST_BEVEL && prepared.angle().degrees() > 0
                        ? prepared.reach()
                        : Length.ZERO;
        };
        return SizeCheck.isMakeable(reach) ? reach : Length.ZERO;
    }

    private void cone(String path, Section.Cone cone) {
        sizes.judge(path + ".from", cone.towardsA(), Kind.SHAFT);
        sizes.judge(path + ".to", cone.towardsB(), Kind.SHAFT);
        Length step = cone.towardsA().length().minus(cone.towardsB().length()).abs();
        if (step.isZero()) {
            findings.fault(path, PartFault.CONE_IS_LEVEL, "Both ends of this cone are alike: write it as round.");
        } else if (cone.length().isPositive()) {
            Angle half = Angle.arctan(step.half().over(cone.length()));
            if (half.compareTo(STEEPEST_CONE) > 0) {
                findings.fault(
                        path,
                        PartFault.CONE_TOO_STEEP,
                        "This cone stands at more than " + Math.round(STEEPEST_CONE.degrees())
                                + "° to the axis: make it longer, or a shoulder with a chamfer.");
            }
        }
    }

    private void polygon(String path, Section.Polygon polygon) {
        String key = polygonPath(path, polygon);
        if (polygon.sides() < FEWEST_SIDES || polygon.sides() > MOST_SIDES) {
            findings.fault(
                    key,
                    PartFault.SIDES_OUT_OF_RANGE,
                    "A section has from " + FEWEST_SIDES + " to " + MOST_SIDES + " flats, not " + polygon.sides()
                            + ".");
            return;
        }
        sizes.judge(key, polygon.flats(), Kind.SHAFT);
        Length flats = polygon.flats().length();
        if (!SizeCheck.isMakeable(flats)) {
            return;
        }
        Length sharp = polygon.sharpCorners();
        if (!polygon.corners().isMoreThan(flats)) {
            findings.fault(
                    key,
                    PartFault.CORNERS_WITHIN_FLATS,
                    "The corners, " + findings.say(polygon.corners()) + ", are no larger than the flats, "
                            + findings.say(flats) + ": sharp corners measure " + findings.say(sharp) + ".");
        } else if (polygon.corners().isMoreThan(sharp)) {
            findings.fault(
                    key,
                    PartFault.CORNERS_BEYOND_SHARP,
                    "The corners, " + findings.say(polygon.corners()) + ", are larger than the sharp ones of "
                            + findings.say(flats) + " flats, " + findings.say(sharp) + ".");
        }
    }

    private static String polygonPath(String path, Section.Polygon polygon) {
        return path
                + switch (polygon.sides()) {
                    case 4 -> ".square";
                    case 6 -> ".hexagon";
                    default -> ".flats";
                };
    }

    private void thread(String path, Section.Threaded threaded) {
        ScrewThread thread = threaded.thread();
        sizes.judge(path + ".thread", thread.major());
        Length lead = thread.lead().length();
        if (threaded.length().isLessThan(lead)) {
            findings.fault(
                    path + ".length",
                    PartFault.THREAD_TOO_SHORT,
                    "One turn of " + thread.designation() + " takes " + findings.say(lead)
                            + ": the thread is no longer than that.");
        }
    }
}
