package chargehand.drawing.dimension;

import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.Bearing;
import chargehand.drawing.view.Side;
import chargehand.measure.Length;
import chargehand.part.End;
import chargehand.part.OnEnd;
import java.util.List;

/** The ways to call out slots across end faces, from where their floor meets the outside. */
record EndSlotWays(Subject subject) {
    private static final double CALLOUT = 2;

    /** One list of ways for each slot. */
    List<List<Placing>> all() {
        return subject.body().onEnds().stream()
                .filter(OnEnd.Slot.class::isInstance)
                .map(feature -> ways((OnEnd.Slot) feature))
                .toList();
    }

    private Length face(OnEnd.Slot slot) {
        return slot.end() == End.A ? Length.ZERO : subject.body().length();
    }

    private List<Placing> ways(OnEnd.Slot slot) {
        Wording wording = Wording.of("slot ")
                .then(subject.text().size(slot.width()))
                .then(Wording.of(" wide, "))
                .then(subject.text().size(slot.depth()))
                .then(Wording.of(" deep"));
        double face = subject.x(slot.end());
        double floor =
                face - Subject.out(slot.end()) * subject.size(slot.depth().length());
        double edge = -subject.size(slot.width().length()) / 2;
        Bearing bearing =
                new Bearing(slot.around().degrees() + subject.look().turn().degrees());
        boolean notch = bearing.isTowards() || bearing.isAway();
        double outside = subject.reach().outside(Side.ABOVE, face(slot));
        List<Point> tips = notch
                ? List.of(new Point((face + floor) / 2, edge), new Point(floor, edge))
                : List.of(new Point(floor, -outside / 2), new Point(floor, -outside * 0.7));
        return new LeaderWays(Subject.inscription(wording), CALLOUT)
                .past(tips, true, -subject.reach().outside(Side.ABOVE));
    }
}
