package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.End;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import java.util.List;
import java.util.Optional;

/** Judges what is left between the hollow and the outside of a turned part. */
final class WallCheck {
    /** The least wall that stands up to being cut and handled (common practice). */
    static final Length LEAST_WALL = Length.mm(0.5);

    private final Body.Turned body;
    private final Findings findings;
    private final Profile outside;
    private final Profile hollow;

    WallCheck(Body.Turned body, Solid solid, Findings findings) {
        this.body = body;
        this.findings = findings;
        this.outside = solid.outerAtLeast();
        this.hollow = solid.hollowAtMost();
    }

    void judge() {
        Optional<Length> through = breakThrough();
        if (through.isPresent()) {
            findings.fault(
                    boreAt(through.get()),
                    PartFault.BREAKS_THROUGH,
                    "This bore comes out through " + sectionAt(through.get()) + ", " + findings.say(through.get())
                            + " from end A, once threads and flats are cut.");
            return;
        }
        withinOthers();
        thinWall();
        webs();
        for (int i = 0; i < body.inside().size(); i++) {
            farEnd(i, body.inside().get(i));
        }
    }

    /** A hole that is there already may well be bored out. */
    private void withinOthers() {
        Solid.boresWithinOthers(body).stream()
                .filter(bore -> !bore.isThere())
                .forEach(bore -> findings.remark(
                        Paths.bore(body.inside().indexOf(bore)) + "." + Paths.key(bore),
                        PartRemark.BORE_WITHIN_LARGER,
                        "This bore lies wholly within larger ones: it changes nothing."));
    }

    /** A position at which the hollow is at least as wide as the outside. */
    private Optional<Length> breakThrough() {
        return outside.positions(hollow).stream()
                .filter(at -> reaches(hollow.radiusBefore(at), outside.radiusBefore(at))
                        || reaches(hollow.radiusAfter(at), outside.radiusAfter(at)))
                .findFirst();
    }

    /** Whether a hollow comes out; where there is none, a pointed end is no hole. */
    private static boolean reaches(Length hollow, Length outside) {
        return hollow.isPositive() && !hollow.isLessThan(outside);
    }

    private void thinWall() {
        hollow.thinnest(outside, LEAST_WALL)
                .ifPresent(thinnest -> findings.fault(
                        boreAt(thinnest.at()),
                        PartFault.WALL_TOO_THIN,
                        "Only " + findings.say(thinnest.wall()) + " of wall is left towards "
                                + sectionAt(thinnest.at()) + ", " + findings.say(thinnest.at())
                                + " from end A: at least " + findings.say(LEAST_WALL) + " is needed."));
    }

    /** Judges the solid webs between bores that meet bottom to bottom. */
    private void webs() {
        List<Station> stations = hollow.stations();
        for (int i = 1; i < stations.size(); i++) {
            Length from = stations.get(i - 1).at();
            Length to = stations.get(i).at();
            boolean solid = stations.get(i - 1).radius().isZero()
                    && stations.get(i).radius().isZero();
            boolean inside = from.isPositive() && to.isLessThan(hollow.end());
            if (solid && inside && to.minus(from).isLessThan(LEAST_WALL) && from.isLessThan(to)) {
                findings.fault(
                        boreAt(from),
                        PartFault.WALL_TOO_THIN,
                        "Only " + findings.say(to.minus(from)) + " is left between this bore and the one from the other"
                                + " end: let them meet, or leave at least " + findings.say(LEAST_WALL) + ".");
            }
        }
    }

    /** Judges the bottom of a blind bore when nothing comes to meet it from the other end. */
    private void farEnd(int index, Bore bore) {
        if (bore.depth() instanceof Depth.Blind && !isMet(bore)) {
            Length left = leftBeyond(bore);
            if (left.isLessThan(LEAST_WALL)) {
                findings.fault(
                        Paths.bore(index) + ".depth",
                        PartFault.BREAKS_THROUGH,
                        "With the point and the room its tool needs, this bore reaches to " + findings.say(left)
                                + " from the other end: make it less deep, or go through.");
            }
        }
    }

    private boolean isMet(Bore bore) {
        return body.inside().stream()
                .anyMatch(other -> other.from() != bore.from() || other.depth() instanceof Depth.Through);
    }

    /** How much is solid on the axis before the end that a blind bore points to. */
    private Length leftBeyond(Bore bore) {
        return switch (bore.from()) {
            case A -> hollow.end().minus(lastHollow(hollow.stations()));
            case B -> lastHollow(hollow.stations().reversed());
        };
    }

    /** The last position, in the order given, that borders on the hollow. */
    private static Length lastHollow(List<Station> stations) {
        Length last = stations.getFirst().at();
        boolean before = false;
        for (Station station : stations) {
            boolean wide = station.radius().isPositive();
            last = wide || before ? station.at() : last;
            before = wide;
        }
        return last;
    }

    private String sectionAt(Length at) {
        int last = body.outside().size() - 1;
        int index = 0;
        while (index < last && at.isMoreThan(body.start(index + 1))) {
            index++;
        }
        return "'" + body.outside().get(index).name() + "'";
    }

    /** The path of the bore that makes the hollow at a position: the widest that reaches it. */
    private String boreAt(Length at) {
        int widest = 0;
        Length most = Length.ZERO;
        for (int i = 0; i < body.inside().size(); i++) {
            Bore bore = body.inside().get(i);
            Length width = Solid.mouthDiameter(bore);
            if (reaches(bore, at) && width.isMoreThan(most)) {
                widest = i;
                most = width;
            }
        }
        return Paths.bore(widest) + "." + Paths.key(body.inside().get(widest));
    }

    private boolean reaches(Bore bore, Length at) {
        Length fromEnd = bore.from() == End.A ? at : body.length().minus(at);
        return !fromEnd.isMoreThan(BoreCheck.depth(bore.depth(), body.length()));
    }
}
