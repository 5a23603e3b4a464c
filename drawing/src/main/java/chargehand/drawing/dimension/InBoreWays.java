package chargehand.drawing.dimension;

import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.Bearing;
import chargehand.drawing.view.BoreGroove;
import chargehand.drawing.view.Side;
import chargehand.measure.Length;
import chargehand.part.InBore;
import chargehand.part.Size;
import java.util.ArrayList;
import java.util.List;

/** The sizes of what is cut into bores, in a side view that is cut: callouts for oil grooves and recesses, positions for both. */
record InBoreWays(Subject subject) {
    private static final double CALLOUT = 2;

    /** One list of ways for each that has a callout. */
    List<List<Placing>> all() {
        List<List<Placing>> all = new ArrayList<>();
        for (InBore feature : subject.body().inBores()) {
            switch (feature) {
                case InBore.Keyway keyway -> {}
                case InBore.OilGroove groove -> all.add(groove(groove));
                case InBore.Recess recess -> all.add(recess(recess));
            }
        }
        return all;
    }

    private List<Placing> groove(InBore.OilGroove feature) {
        Wording wording = Wording.of("oil groove ")
                .then(subject.text().size(feature.width()))
                .then(Wording.of(" wide, "))
                .then(subject.text().size(feature.depth()))
                .then(Wording.of(feature.run() instanceof InBore.Run.Open ? " deep, right through" : " deep"));
        return BoreGroove.of(subject.body(), subject.look().solid()).stream()
                .filter(groove -> groove.feature().equals(feature))
                .flatMap(groove -> ways(groove, wording).stream())
                .toList();
    }

    private List<Placing> ways(BoreGroove groove, Wording wording) {
        Bearing bearing = Bearing.of(groove.feature(), subject.look().turn());
        double up = bearing.isUp() || bearing.isDown() ? bearing.up() * subject.size(groove.floor()) : 0;
        List<Point> tips = new ArrayList<>();
        for (double part : new double[] {0.5, 0.3, 0.7}) {
            Length at = groove.from().plus(groove.to().minus(groove.from()).times(part));
            tips.add(new Point(subject.x(at), -up));
        }
        return past(wording, tips, up > 0);
    }

    private List<Placing> recess(InBore.Recess recess) {
        Length from = recess.from().length();
        double left = subject.x(from);
        double right = subject.x(from.plus(recess.width().length()));
        double floor = subject.size(recess.diameter().length().half());
        Wording wording = subject.text().diameter(recess.diameter());
        List<Placing> ways = new ArrayList<>();
        for (Side side : Side.values()) {
            if (subject.isCut(side)) {
                List<Point> tips = List.of(
                        new Point((left + right) / 2, side.outward() * floor),
                        new Point(left + 0.3 * (right - left), side.outward() * floor));
                ways.addAll(past(wording, tips, side == Side.ABOVE));
            }
        }
        return ways;
    }

    private List<Placing> past(Wording wording, List<Point> tips, boolean upward) {
        double outline = subject.reach().outside(upward ? Side.ABOVE : Side.BELOW);
        return new LeaderWays(Subject.inscription(wording), CALLOUT).past(tips, upward, upward ? -outline : outline);
    }

    /** Where they lie along the axis, and how far they go. */
    List<AxialDimension> positions() {
        List<AxialDimension> positions = new ArrayList<>();
        for (InBore feature : subject.body().inBores()) {
            switch (feature) {
                case InBore.Keyway keyway -> {}
                case InBore.OilGroove groove -> {
                    switch (groove.run()) {
                        case InBore.Run.Open() -> {}
                        case InBore.Run.Part(Size from, Size length) -> add(from, length, positions);
                    }
                }
                case InBore.Recess recess -> add(recess.from(), recess.width(), positions);
            }
        }
        return positions;
    }

    private void add(Size from, Size length, List<AxialDimension> positions) {
        new AcrossWays(subject).addStretch(from.length(), from, length, positions);
    }
}
