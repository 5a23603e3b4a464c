package chargehand.drawing.dimension;

import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Label;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.Cut;
import chargehand.drawing.view.Side;
import chargehand.measure.AngleText;
import chargehand.measure.Length;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.End;
import chargehand.part.Size;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.List;

/** The ways to give what a bore is, in a view that is cut below the axis. */
record BoreWays(Subject subject, Bore bore) {
    private static final double LEADER = 20;
    private static final double CALLOUT = 2;

    /** Two radii nearer than this are one: rounding of half diameters. */
    private static final Length SAME = new Length(2);

    List<Placing> all() {
        return switch (bore) {
            case Bore.Drilled drilled -> called(hole(subject.text().diameter(drilled.diameter())));
            case Bore.Tapped tapped -> called(hole(SectionWays.thread(tapped.thread(), tapped.fit())));
            case Bore.Coned coned -> called(cone(coned));
            case Bore.Bored bored -> upright(bored.diameter());
            case Bore.Reamed reamed -> upright(reamed.diameter());
            case Bore.Counterbored wide -> upright(wide.diameter());
        };
    }

    private Wording hole(Wording size) {
        return switch (bore.depth()) {
            case Depth.Through() -> size.then(Wording.of(" through"));
            case Depth.Blind(Size depth) ->
                size.then(Wording.of(", ")).then(subject.text().size(depth)).then(Wording.of(" deep"));
        };
    }

    private Wording cone(Bore.Coned coned) {
        Wording mouth =
                subject.text().diameter(coned.mouth()).then(Wording.of(" × " + AngleText.seconds(coned.angle())));
        boolean meets = subject.body().inside().stream()
                .filter(other -> !other.equals(coned))
                .anyMatch(other ->
                        radius(other).isWithin(SAME, coned.to().length().half()));
        return meets
                ? mouth
                : mouth.then(Wording.of(" to ")).then(subject.text().diameter(coned.to()));
    }

    static Length radius(Bore bore) {
        return switch (bore) {
            case Bore.Drilled drilled -> drilled.diameter().length().half();
            case Bore.Bored bored -> bored.diameter().length().half();
            case Bore.Reamed reamed -> reamed.diameter().length().half();
            case Bore.Counterbored wide -> wide.diameter().length().half();
            case Bore.Tapped tapped -> tapped.thread().minorInternal().half();
            case Bore.Coned coned -> coned.mouth().length().half();
        };
    }

    /** A leader from the wall at the mouth, or from wherever the wall shows. */
    private List<Placing> called(Wording wording) {
        Label label = Subject.inscription(wording);
        List<Placing> all = new ArrayList<>();
        double wall = subject.size(radius(bore));
        for (Stretch stretch : stretches()) {
            all.addAll(new LeaderWays(label, LEADER)
                    .past(stretch.points(wall), false, subject.reach().outside(Side.BELOW)));
        }
        for (End end : ends()) {
            Point mouth = new Point(subject.x(end), wall);
            all.addAll(new LeaderWays(label, CALLOUT).beyond(mouth, Subject.out(end)));
        }
        return all;
    }

    private List<Placing> upright(Size diameter) {
        Wording wording = subject.text().diameter(diameter);
        List<Side> sides = subject.look().cut() == Cut.FULL ? List.of(Side.ABOVE, Side.BELOW) : List.of(Side.BELOW);
        double wall = subject.size(diameter.length()) / 2;
        DiameterWays ways = new DiameterWays(wall, sides, wording);
        List<Placing> all = new ArrayList<>();
        for (Stretch stretch : stretches()) {
            all.addAll(ways.within(stretch.from, stretch.to));
            all.addAll(new LeaderWays(Subject.inscription(wording), LEADER)
                    .past(stretch.points(wall), false, subject.reach().outside(Side.BELOW)));
        }
        for (End end : ends()) {
            List<Stretch> stretches = stretches();
            double corner = stretches.isEmpty()
                    ? subject.x(end)
                    : end == End.A ? stretches.getFirst().from : stretches.getLast().to;
            all.addAll(ways.beyond(corner, subject.x(end), Subject.out(end)));
        }
        return all;
    }

    /** A stretch of the view from one x to another. */
    private record Stretch(double from, double to) {
        List<Point> points(double y) {
            return List.of(at(0.5, y), at(0.3, y), at(0.7, y));
        }

        private Point at(double part, double y) {
            return new Point(from + part * (to - from), y);
        }
    }

    /** Where the wall of this bore itself shows, not that of a larger one over it. */
    private List<Stretch> stretches() {
        List<Station> stations = subject.look().solid().innerAtMost().stations();
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 1; i < stations.size(); i++) {
            Station before = stations.get(i - 1);
            Station after = stations.get(i);
            boolean own = before.radius().isWithin(SAME, radius(bore))
                    && after.radius().isWithin(SAME, radius(bore));
            if (own && before.at().isLessThan(after.at())) {
                stretches.add(new Stretch(subject.x(before.at()), subject.x(after.at())));
            }
        }
        return stretches;
    }

    /** The ends from which the bore can be looked into. */
    private List<End> ends() {
        List<End> ends = new ArrayList<>();
        ends.add(bore.from());
        if (bore.depth() instanceof Depth.Through && isOpen(bore.from().other())) {
            ends.add(bore.from().other());
        }
        return ends;
    }

    /** Whether nothing narrower than this bore stands before it at an end. */
    private boolean isOpen(End end) {
        Profile hollow = subject.look().solid().inner();
        Length at = end == End.A ? Length.ZERO : subject.body().length();
        Length there = end == End.A ? hollow.radiusAfter(at) : hollow.radiusBefore(at);
        return !there.isLessThan(radius(bore));
    }
}
