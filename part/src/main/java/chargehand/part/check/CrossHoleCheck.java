package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.measure.Written;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.Size;
import chargehand.part.shape.DrillPoint;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Station;

/** Judges one hole across a turned part against the outside and the bores it meets or misses. */
final class CrossHoleCheck {
    private final Body.Turned body;
    private final Findings findings;
    private final Profile outside;
    private final Profile hollow;

    /**
     * A check for the holes across one part.
     *
     * @param outside what is left of it once threads and flats are cut
     * @param hollow all that its bores may take away
     */
    CrossHoleCheck(Body.Turned body, Profile outside, Profile hollow, Findings findings) {
        this.body = body;
        this.findings = findings;
        this.outside = outside;
        this.hollow = hollow;
    }

    /** Judges a hole for a taper pin by its large end. */
    void judge(String path, Across.TaperPin pin) {
        Length at = Length.most(Length.ZERO, Length.least(pin.at().length(), body.length()));
        Length large = pin.largeEnd(outside.radiusBefore(at).times(2));
        Size size = Size.general(Written.of(large, pin.nominal().nominal().unit()));
        var hole = new Across.CrossHole(pin.name(), size, pin.at(), new Depth.Through(), pin.around());
        judge(path, hole, "taper-pin");
    }

    void judge(String path, Across.CrossHole hole) {
        judge(path, hole, "hole");
    }

    private void judge(String path, Across.CrossHole hole, String key) {
        Length half = hole.diameter().length().half();
        Length from = hole.at().length().minus(half);
        Length to = hole.at().length().plus(half);
        Length edge = WallCheck.LEAST_WALL;
        if (from.isLessThan(edge) || to.isMoreThan(body.length().minus(edge))) {
            findings.fault(
                    path + ".at",
                    PartFault.ACROSS_OFF_PART,
                    "This hole reaches from " + findings.say(from) + " to " + findings.say(to)
                            + " along a part " + findings.say(body.length()) + " long: leave at least "
                            + findings.say(edge) + " at the end.");
            return;
        }
        Length least = outside.least(from, to).times(2);
        if (!hole.diameter().length().plus(edge.times(2)).isLessThan(least)) {
            findings.fault(
                    path + "." + key,
                    PartFault.ACROSS_TOO_WIDE,
                    "The part is only " + findings.say(least) + " thick here: too little for this hole.");
            return;
        }
        corner(path, from, to);
        bottom(path, hole, from, to);
    }

    private void corner(String path, Length from, Length to) {
        for (int i = 1; i < body.outside().size(); i++) {
            Length start = body.start(i);
            if (start.isMoreThan(from) && start.isLessThan(to)) {
                findings.remark(
                        path + ".at",
                        PartRemark.HOLE_ON_CORNER,
                        "This hole lies on the corner between '"
                                + body.outside().get(i - 1).name() + "' and '"
                                + body.outside().get(i).name() + "': a drill will wander there.");
            }
        }
    }

    private void bottom(String path, Across.CrossHole hole, Length from, Length to) {
        Length surface = outside.most(from, to);
        switch (hole.depth()) {
            case Depth.Through() -> nearBore(path, from, to);
            case Depth.Blind(var depth) -> {
                Length height = surface.minus(depth.length());
                Length point = DrillPoint.height(hole.diameter().length());
                blind(path, surface, height, height.minus(point), hollow.most(from, to));
                if (!height.minus(point).isPositive()) {
                    nearBore(path, from, to);
                }
            }
        }
    }

    /**
     * Judges where a blind hole ends.
     *
     * @param height of the full diameter's end above the axis, negative beyond it
     * @param tip of the point, the same way
     * @param bore the radius of the hollow here, zero where it is solid
     */
    private void blind(String path, Length surface, Length height, Length tip, Length bore) {
        Length beyond = surface.plus(Length.least(tip, height));
        Length before = tip.minus(bore);
        if (beyond.isLessThan(WallCheck.LEAST_WALL)) {
            findings.fault(
                    path + ".depth",
                    PartFault.ACROSS_TOO_DEEP,
                    "With its point this hole comes out on the other side, or nearly: write 'through: true'.");
        } else if (bore.isPositive() && height.isMoreThan(bore) && before.isLessThan(WallCheck.LEAST_WALL)) {
            findings.fault(
                    path + ".depth",
                    PartFault.WALL_TOO_THIN,
                    "This hole ends " + findings.say(height.minus(bore))
                            + " above the bore: drill into it, or leave at least "
                            + findings.say(WallCheck.LEAST_WALL) + " below the point.");
        }
    }

    /** Judges a bore that ends just short of this hole. */
    private void nearBore(String path, Length from, Length to) {
        if (hollow.most(from, to).isPositive()) {
            return;
        }
        Length low = Length.most(from.minus(WallCheck.LEAST_WALL), Length.ZERO);
        Length high = Length.least(to.plus(WallCheck.LEAST_WALL), hollow.end());
        boolean near =
                hollow.cut(low, high).stations().stream().map(Station::radius).anyMatch(Length::isPositive);
        if (near) {
            findings.fault(
                    path + ".at",
                    PartFault.WALL_TOO_THIN,
                    "A bore ends less than " + findings.say(WallCheck.LEAST_WALL)
                            + " from this hole: let them meet, or keep them apart.");
        }
    }
}
