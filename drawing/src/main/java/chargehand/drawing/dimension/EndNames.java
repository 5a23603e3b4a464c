package chargehand.drawing.dimension;

import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Inscription;
import chargehand.drawing.sign.Local;
import chargehand.drawing.sign.Wording;
import chargehand.part.End;
import java.util.ArrayList;
import java.util.List;

/** Small words that say which end is which, so that notes and method sheets can speak of end A and end B. */
record EndNames(Subject subject) {
    private static final double HEIGHT = 2.5;
    private static final double CLEAR = 4;
    private static final double OFF_AXIS = 1;
    private static final List<Double> OUT = List.of(0.0, 7.0, 14.0, 22.0, 30.0);

    /** One list of ways for each end. */
    List<List<Placing>> all() {
        return List.of(ways(End.A), ways(End.B));
    }

    private List<Placing> ways(End end) {
        Inscription name = new Inscription(Wording.of("end " + end.name()), HEIGHT);
        List<Placing> ways = new ArrayList<>();
        for (double out : OUT) {
            double near = subject.x(end) + Subject.out(end) * (CLEAR + out);
            double left = end == End.A ? near - name.width() : near;
            for (double base : new double[] {-OFF_AXIS, OFF_AXIS + HEIGHT}) {
                ways.add(Placing.pen()
                        .label(name, Local.at(new Point(left, base)))
                        .at(out));
            }
        }
        return ways;
    }
}
