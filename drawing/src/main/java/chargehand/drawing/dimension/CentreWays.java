package chargehand.drawing.dimension;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.CentreHoleSign;
import chargehand.drawing.sign.Inscription;
import chargehand.drawing.sign.Local;
import chargehand.drawing.sign.Wording;
import chargehand.part.OnEnd;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The ways to say what is asked of the centre holes, by the sign of ISO 6411 at the end face and the hole's designation. */
record CentreWays(Subject subject) {
    private static final List<Integer> ANGLES = List.of(60, 45, 75);
    private static final List<Double> LENGTHS = List.of(12.0, 17.0, 22.0, 28.0, 35.0, 43.0, 52.0);
    private static final double SHELF = 3;
    private static final double CLEAR = 1;
    private static final double PER_MM = 0.35;

    /** One list of ways for each centre hole that something is asked of. */
    List<List<Placing>> all() {
        return subject.body().onEnds().stream()
                .filter(OnEnd.Centre.class::isInstance)
                .map(feature -> ways((OnEnd.Centre) feature))
                .toList();
    }

    /** What stands at a centre hole. */
    static String designation(OnEnd.Centre centre) {
        return "ISO 6411 - " + centre.hole().designation();
    }

    private static CentreHoleSign sign(OnEnd.Centre centre) {
        return switch (centre.stays()) {
            case MUST -> CentreHoleSign.MUST_STAY;
            case MAY -> CentreHoleSign.MAY_STAY;
            case MUST_NOT -> CentreHoleSign.MUST_NOT_STAY;
        };
    }

    private List<Placing> ways(OnEnd.Centre centre) {
        int out = Subject.out(centre.end());
        Point face = new Point(subject.x(centre.end()), 0);
        Point tip = sign(centre).point(face, out, Placing.HEIGHT);
        Inscription label = Subject.inscription(Wording.of(designation(centre)));
        Sign sign = new Sign(sign(centre).marks(face, out, Placing.HEIGHT), covered(centre, face, out));
        List<Placing> ways = new ArrayList<>();
        for (double length : LENGTHS) {
            for (int angle : ANGLES) {
                double direction = 90 - out * (90.0 - angle);
                for (double turned : new double[] {direction, -direction}) {
                    ways.add(way(tip, turned, length, label, sign));
                }
            }
        }
        return ways;
    }

    /** What is drawn at the face, and what it covers of the paper beside it. */
    private record Sign(List<Mark> marks, Optional<Box> covered) {}

    private static Optional<Box> covered(OnEnd.Centre centre, Point face, int out) {
        double reach = sign(centre).reach(Placing.HEIGHT);
        if (reach == 0) {
            return Optional.empty();
        }
        double half = reach / 2;
        return Optional.of(Box.around(List.of(face.moved(out * reach / 4, -half), face.moved(out * reach, half))));
    }

    /** A leader from the point of the sign; where there is no sign, its arrow. */
    private static Placing way(Point tip, double direction, double length, Inscription label, Sign sign) {
        Point elbow = tip.towards(direction, length);
        int lean = elbow.x() >= tip.x() ? 1 : -1;
        Point end = elbow.moved(lean * SHELF, 0);
        double start = lean > 0 ? end.x() + CLEAR : end.x() - CLEAR - label.width();
        Placing.Pen pen = Placing.pen()
                .line(Placing.Kind.LEADER, tip, elbow)
                .line(Placing.Kind.LEADER, elbow, end)
                .label(label, Local.at(new Point(start, end.y() + (label.ascent() - label.descent()) / 2)));
        sign.marks.forEach(pen::sign);
        sign.covered.ifPresent(pen::covers);
        if (sign.marks.isEmpty()) {
            pen.arrow(tip, direction + 180);
        }
        return pen.at(PER_MM * length);
    }
}
