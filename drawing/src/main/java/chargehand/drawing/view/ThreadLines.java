package chargehand.drawing.view;

import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import java.util.List;

/**
 * Threads after ISO 6410-1: the crest is the outline, the root a narrow continuous line, the end of full thread a wide line
 * across.
 *
 * @param look the part
 */
record ThreadLines(Look look) {
    /** The least room between crest and root on paper (mm): twice the wide line, and never under 0.7. */
    static final double LEAST = 1.0;

    /** How far into the thread the slope of a taper thread is taken, clear of chamfers. */
    private static final double CLEAR = 0.35;

    void draw(Pencil pencil) {
        for (Solid.ThreadPlace place : look.solid().threads()) {
            for (Side side : Side.values()) {
                if (!place.inside()) {
                    outside(place, side, pencil);
                } else if (side.isCut(look.cut())) {
                    inside(place, side, pencil);
                }
            }
        }
    }

    private void outside(Solid.ThreadPlace place, Side side, Pencil pencil) {
        Profile profile = look.solid().outer();
        double drop = Math.max(place.thread().depth().mm(), LEAST / look.scale().scale());
        Length rootFrom = flank(profile, place, place.from()).minus(Length.mm(drop));
        Length rootTo = flank(profile, place, place.to()).minus(Length.mm(drop));
        if (rootFrom.isNegative() || rootTo.isNegative()) {
            return;
        }
        Length from = clear(profile, place, rootFrom, place.from());
        Length to = clear(profile, place, rootTo, place.to());
        pencil.line(LineStyle.NARROW, side.at(look.scale(), from, rootFrom), side.at(look.scale(), to, rootTo));
        for (Length end : List.of(place.from(), place.to())) {
            if (end.isPositive() && end.isLessThan(look.solid().length())) {
                Length crest = flank(profile, place, end);
                Length root = end.equals(place.from()) ? rootFrom : rootTo;
                Length start = side.isCut(look.cut()) ? root : Length.ZERO;
                pencil.line(LineStyle.WIDE, side.at(look.scale(), end, start), side.at(look.scale(), end, crest));
            }
        }
    }

    /** Where the root line ends: at the thread's own end, or where it comes out at a chamfer. */
    private static Length clear(Profile profile, Solid.ThreadPlace place, Length root, Length end) {
        Length radius = end.equals(place.from()) ? profile.radiusAfter(end) : profile.radiusBefore(end);
        if (!radius.isLessThan(root)) {
            return end;
        }
        List<Length> across = profile.cut(place.from(), place.to()).stations().stream()
                .filter(station -> !station.radius().isLessThan(root))
                .map(station -> station.at())
                .toList();
        Length inner = end.equals(place.from()) ? across.getFirst() : across.getLast();
        Length high = profile.radiusBefore(inner);
        double part = root.minus(radius).over(high.minus(radius));
        return end.plus(inner.minus(end).times(part));
    }

    /** The radius of the crest at a position, as if the thread had no chamfers: level, or on a taper. */
    private static Length flank(Profile profile, Solid.ThreadPlace place, Length at) {
        Length length = place.to().minus(place.from());
        Length one = place.from().plus(length.times(CLEAR));
        Length other = place.to().minus(length.times(CLEAR));
        Length here = profile.radiusAfter(one);
        Length there = profile.radiusAfter(other);
        double part = at.minus(one).over(other.minus(one));
        return here.plus(there.minus(here).times(part));
    }

    private void inside(Solid.ThreadPlace place, Side side, Pencil pencil) {
        AxialScale scale = look.scale();
        Length crest = place.thread().minorInternal().half();
        Length root = Length.most(place.thread().majorInternal().half(), crest.plus(Length.mm(LEAST / scale.scale())));
        Point from = side.at(scale, place.from(), root);
        Point to = side.at(scale, place.to(), root);
        pencil.line(LineStyle.NARROW, from, to);
        for (Length end : List.of(place.from(), place.to())) {
            if (end.isPositive() && end.isLessThan(look.solid().length())) {
                pencil.line(LineStyle.WIDE, scale.onAxis(end), side.at(scale, end, root));
            }
        }
    }
}
