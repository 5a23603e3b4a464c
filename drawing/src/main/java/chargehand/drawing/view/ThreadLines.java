package chargehand.drawing.view;

import chargehand.drawing.picture.LineStyle;
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
        Length deeper = deeper(place);
        Length rootFrom = place.root().radiusAfter(place.from()).minus(deeper);
        Length rootTo = place.root().radiusBefore(place.to()).minus(deeper);
        if (rootFrom.isNegative() || rootTo.isNegative()) {
            return;
        }
        Length from = clear(profile, place, rootFrom, place.from());
        Length to = clear(profile, place, rootTo, place.to());
        pencil.line(LineStyle.NARROW, side.at(look.scale(), from, rootFrom), side.at(look.scale(), to, rootTo));
        end(place, side, place.from(), rootFrom.plus(deeper), pencil);
        end(place, side, place.to(), rootTo.plus(deeper), pencil);
    }

    /** How much deeper the root is drawn than it is, so that it stands clear of the crest. */
    private Length deeper(Solid.ThreadPlace place) {
        Length depth = place.thread().depth();
        return Length.most(Length.mm(LEAST / look.scale().scale()).minus(depth), Length.ZERO);
    }

    /** The end of full thread, unless the part ends there too. */
    private void end(Solid.ThreadPlace place, Side side, Length end, Length root, Pencil pencil) {
        if (end.isPositive() && end.isLessThan(look.solid().length())) {
            Length start = side.isCut(look.cut()) ? root : Length.ZERO;
            Length crest = root.plus(place.thread().depth());
            pencil.line(LineStyle.WIDE, side.at(look.scale(), end, start), side.at(look.scale(), end, crest));
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

    private void inside(Solid.ThreadPlace place, Side side, Pencil pencil) {
        AxialScale scale = look.scale();
        Length deeper = deeper(place);
        Length from = place.root().radiusAfter(place.from()).plus(deeper);
        Length to = place.root().radiusBefore(place.to()).plus(deeper);
        pencil.line(LineStyle.NARROW, side.at(scale, place.from(), from), side.at(scale, place.to(), to));
        for (Length end : List.of(place.from(), place.to())) {
            if (end.isPositive() && end.isLessThan(look.solid().length())) {
                Length root = end.equals(place.from()) ? from : to;
                pencil.line(LineStyle.WIDE, scale.onAxis(end), side.at(scale, end, root));
            }
        }
    }
}
