package chargehand.drawing.dimension;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.Segment;
import java.util.List;

/** Counts what a draughtsman would not leave on a view: words on anything, lines of sizes through each other. */
final class Troubles {
    private static final double SAME = 0.01;

    /** More crossings of extension lines than this on one view are too many. */
    private static final int BEARABLE = 8;

    private final List<Placing> placed;
    private final Obstacles outlines;

    private Troubles(Dimensioned view) {
        placed = view.placed();
        outlines = new Obstacles(view.view().outlines());
    }

    static int of(Dimensioned view) {
        Troubles troubles = new Troubles(view);
        int count = 0;
        int crossings = 0;
        for (int i = 0; i < troubles.placed.size(); i++) {
            Placing one = troubles.placed.get(i);
            for (Box text : one.texts()) {
                count += troubles.outlines.meeting(text);
            }
            for (int j = i + 1; j < troubles.placed.size(); j++) {
                Placing other = troubles.placed.get(j);
                if (one.extent().grown(SAME).overlaps(other.extent())) {
                    count += words(one, other) + words(other, one) + lines(one, other, true);
                    crossings += lines(one, other, false);
                }
            }
        }
        return count + Math.max(0, crossings - BEARABLE);
    }

    private static int words(Placing one, Placing other) {
        int count = 0;
        for (Box text : one.texts()) {
            for (Box theirs : other.texts()) {
                count += text.overlaps(theirs) ? 1 : 0;
            }
            for (Placing.Stroke line : other.lines()) {
                count += line.segment().meets(text) ? 1 : 0;
            }
            count += other.marks(text) ? 1 : 0;
        }
        return count;
    }

    /** How often their lines cross: those that never may, or those that may if they must. */
    private static int lines(Placing one, Placing other, boolean never) {
        int count = 0;
        for (Placing.Stroke mine : one.lines()) {
            for (Placing.Stroke theirs : other.lines()) {
                boolean both = mine.segment().crosses(theirs.segment())
                        && !touch(mine.segment(), theirs.segment())
                        && !meetAtTip(mine.segment(), theirs.segment(), one)
                        && !meetAtTip(mine.segment(), theirs.segment(), other);
                count += both && isTrouble(mine.kind(), theirs.kind()) == never ? 1 : 0;
            }
        }
        return count;
    }

    /** Whether one only ends at the other. */
    private static boolean touch(Segment one, Segment other) {
        return one.distance(other.from()) < SAME
                || one.distance(other.to()) < SAME
                || other.distance(one.from()) < SAME
                || other.distance(one.to()) < SAME;
    }

    private static boolean meetAtTip(Segment mine, Segment theirs, Placing placing) {
        for (Point tip : placing.tips()) {
            if (mine.distance(tip) < SAME && theirs.distance(tip) < SAME) {
                return true;
            }
        }
        return false;
    }

    /** Extension lines may cross each other and leaders; nothing else may. */
    private static boolean isTrouble(Placing.Kind one, Placing.Kind other) {
        return one == Placing.Kind.DIMENSION
                || other == Placing.Kind.DIMENSION
                || (one == Placing.Kind.LEADER && other == Placing.Kind.LEADER);
    }
}
