package chargehand.drawing.stage;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.drawing.view.AxialScale;
import chargehand.drawing.view.Cut;
import chargehand.drawing.view.Reach;
import chargehand.drawing.view.Side;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.Depth;
import chargehand.part.Size;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.List;

/** Marks the surfaces that are cut, and tells where a leader may touch each of them. */
final class SurfaceLines {
    private final Held held;
    private final AxialScale scale;
    private final boolean cut;
    private final List<Mark> marks = new ArrayList<>();

    SurfaceLines(Held held, AxialScale scale) {
        this.held = held;
        this.scale = scale;
        cut = held.look(scale).cut() != Cut.NONE;
    }

    List<Mark> marks() {
        held.stage().surfaces().forEach(this::mark);
        return marks;
    }

    private void mark(Surface surface) {
        switch (surface) {
            case Surface.Outside(Length from, Length to, String label) -> {
                List<Point> line = outside(first(from, to), last(from, to));
                stroke(line);
                stroke(mirrored(line));
                threads(from, to);
            }
            case Surface.Inside(Length from, Length to, String label) -> {
                stroke(mirrored(line(held.solid().inner(), first(from, to), last(from, to))));
                threads(from, to);
            }
            case Surface.Face(Length at, String label) -> face(within(held.bed().along(at)));
            case Surface.Flats(Length from, Length to, String label) -> flats(first(from, to), last(from, to));
            case Surface.Feature(Length at, String label) -> feature(at);
        }
    }

    private Length first(Length from, Length to) {
        return within(held.bed().first(from, to));
    }

    private Length last(Length from, Length to) {
        return within(held.bed().last(from, to));
    }

    /** The nearest position at which there is work. */
    private Length within(Length at) {
        return Length.most(
                held.solid().outer().start(), Length.least(at, held.solid().length()));
    }

    /** The outside over a span, with a shoulder at either end where the neighbour is larger. */
    private List<Point> outside(Length from, Length to) {
        Profile outer = held.solid().outer();
        List<Point> line = new ArrayList<>(line(outer, from, to));
        if (from.isMoreThan(outer.start()) && outer.radiusBefore(from).isMoreThan(outer.radiusAfter(from))) {
            line.addFirst(scale.above(from, outer.radiusBefore(from)));
        }
        if (to.isLessThan(outer.end()) && outer.radiusAfter(to).isMoreThan(outer.radiusBefore(to))) {
            line.addLast(scale.above(to, outer.radiusAfter(to)));
        }
        return line;
    }

    private List<Point> line(Profile profile, Length from, Length to) {
        if (!from.isLessThan(to)) {
            return List.of();
        }
        List<Point> line = new ArrayList<>();
        for (Station station : profile.cut(from, to).stations()) {
            line.add(scale.above(station.at(), station.radius()));
        }
        return line;
    }

    private static List<Point> mirrored(List<Point> line) {
        return line.stream().map(point -> new Point(point.x(), -point.y())).toList();
    }

    private void stroke(List<Point> line) {
        if (line.size() > 1) {
            marks.add(new Mark.Stroke(LineStyle.HEAVY, Ink.MARKING, Path.through(line)));
        }
    }

    private void face(Length at) {
        Profile outer = held.solid().outer();
        Length radius = Length.most(outer.radiusBefore(at), outer.radiusAfter(at));
        Profile inner = held.solid().inner();
        Length hollow = cut ? Length.most(inner.radiusBefore(at), inner.radiusAfter(at)) : Length.ZERO;
        stroke(List.of(scale.onAxis(at), scale.above(at, radius)));
        stroke(List.of(scale.below(at, hollow), scale.below(at, radius)));
    }

    /** The roots of threads within a span, so that they are not taken for plain turning. */
    private void threads(Length from, Length to) {
        for (Solid.ThreadPlace place : held.solid().threads()) {
            if (place.from().isLessThan(last(from, to)) && place.to().isMoreThan(first(from, to)) && !place.inside()) {
                Length first = place.root().radiusAfter(place.from());
                Length last = place.root().radiusBefore(place.to());
                for (Side side : Side.values()) {
                    marks.add(new Mark.Line(
                            LineStyle.SYMBOL,
                            Ink.MARKING,
                            side.at(scale, place.from(), first),
                            side.at(scale, place.to(), last)));
                }
            }
        }
    }

    private void flats(Length from, Length to) {
        for (Solid.FlatsPlace place : held.solid().flats()) {
            if (place.from().isLessThan(to) && place.to().isMoreThan(from)) {
                Point corner = scale.above(place.from(), place.across().half());
                Point opposite = scale.below(place.to(), place.across().half());
                marks.add(new Mark.Stroke(
                        LineStyle.HEAVY,
                        Ink.MARKING,
                        Path.box(corner, opposite.x() - corner.x(), opposite.y() - corner.y())));
            }
        }
    }

    private void feature(Length at) {
        held.at(at).ifPresent(feature -> stroke(cutFromAbove(feature)));
    }

    /** The walls and the floor of what is cut from above. */
    private List<Point> cutFromAbove(Across feature) {
        return switch (feature) {
            case Across.CrossHole hole -> hole(hole);
            case Across.TaperPin pin -> hole(pin.drilled());
            case Across.Slit slit -> {
                Length outer = held.solid().outer().most(slit.begins(), slit.ends());
                Length deep = switch (slit.walls()) {
                    case ONE -> outer.minus(held.solid().inner().most(slit.begins(), slit.ends()));
                    case BOTH -> outer.times(2);
                };
                yield notch(slit.begins(), slit.ends(), outer, deep);
            }
            case Across.Keyway keyway ->
                notch(
                        keyway.begins(),
                        keyway.ends(),
                        held.solid().outer().radiusAfter(keyway.begins()),
                        keyway.depth().length());
            case Across.Flat flat -> {
                Length outer = held.solid().outer().most(flat.begins(), flat.ends());
                yield notch(
                        flat.begins(),
                        flat.ends(),
                        outer,
                        outer.minus(flat.depth().height(outer)));
            }
        };
    }

    private List<Point> hole(Across.CrossHole hole) {
        Length outer = held.solid().outer().radiusBefore(hole.at().length());
        Length depth = switch (hole.depth()) {
            case Depth.Through() -> outer.times(2);
            case Depth.Blind(Size size) -> size.length();
        };
        return notch(hole.begins(), hole.ends(), outer, depth);
    }

    private List<Point> notch(Length from, Length to, Length outer, Length depth) {
        double top = -scale.size(outer);
        double floor = top + scale.size(depth);
        return List.of(
                new Point(scale.x(from), top),
                new Point(scale.x(from), floor),
                new Point(scale.x(to), floor),
                new Point(scale.x(to), top));
    }

    /** Where a leader may touch a surface. */
    List<Point> tips(Surface surface) {
        return switch (surface) {
            case Surface.Outside(Length from, Length to, String label) ->
                spread(held.solid().outer(), first(from, to), last(from, to), Side.ABOVE);
            case Surface.Inside(Length from, Length to, String label) ->
                spread(held.solid().inner(), first(from, to), last(from, to), Side.BELOW);
            case Surface.Face(Length at, String label) -> {
                Length here = within(held.bed().along(at));
                yield List.of(scale.above(
                        here, held.solid().outer().radiusBefore(here).times(0.8)));
            }
            case Surface.Flats(Length from, Length to, String label) -> flatTips(first(from, to), last(from, to));
            case Surface.Feature(Length at, String label) -> featureTips(at);
        };
    }

    private List<Point> flatTips(Length from, Length to) {
        Reach reach = new Reach(held.look(scale));
        Length middle = from.plus(to).half();
        return List.of(new Point(scale.x(middle), -reach.outside(Side.ABOVE, middle)));
    }

    /** At the mouth of what is cut from above. */
    private List<Point> featureTips(Length at) {
        return held.at(at)
                .map(this::cutFromAbove)
                .map(walls -> List.of(walls.getLast(), walls.getFirst()))
                .orElseGet(() -> List.of(scale.onAxis(within(held.bed().along(at)))));
    }

    private List<Point> spread(Profile profile, Length from, Length to, Side side) {
        List<Point> tips = new ArrayList<>();
        for (double part : new double[] {0.6, 0.4, 0.8, 0.2}) {
            Length at = from.plus(to.minus(from).times(part));
            tips.add(side.at(scale, at, profile.radiusBefore(at)));
        }
        return tips;
    }
}
