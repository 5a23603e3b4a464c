package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.method.kit.Lathe;
import chargehand.method.plan.Holding;
import chargehand.method.task.Shape;
import chargehand.method.task.Task;
import chargehand.method.work.Standing;
import chargehand.part.End;
import chargehand.part.shape.Profile;
import chargehand.trade.sum.Step;
import chargehand.trade.sum.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Work clamped against a lathe's faceplate: a finished end on the plate, clamps on a ledge or on the rim of the outer end, and
 * what lies within them open. It holds what jaws cannot, such as a tapered or screwed outside, and is dialled true.
 */
final class FaceplateHoldings {
    /** The least that a clamp laps over a face (common practice). */
    private static final Length LAP = Length.mm(10);

    /** How far clamps and nuts stand out from it. */
    private static final Length HEIGHT = Length.mm(18);

    private final Lathe lathe;
    private final Standing work;
    private final Profile hollow;

    private FaceplateHoldings(Lathe lathe, Standing work, Profile hollow) {
        this.lathe = lathe;
        this.work = work;
        this.hollow = hollow;
    }

    /** @param hollow the inside of the finished part */
    static List<Choice> list(Lathe lathe, Standing work, Profile hollow) {
        var choices = new ArrayList<Choice>();
        Length swing = LatheHoldings.largestSwing(work);
        boolean takes = !work.isOnBar()
                && !swing.isMoreThan(lathe.room().overSlide())
                && lathe.holders()
                        .faceplate()
                        .filter(largest -> !swing.isMoreThan(largest))
                        .isPresent();
        var holdings = new FaceplateHoldings(lathe, work, hollow);
        for (End headstock : takes ? End.values() : new End[0]) {
            if (work.isDone(new Task.FaceOf(headstock)) && holdings.isDialledByOutside()) {
                holdings.rim(headstock).ifPresent(choices::add);
                holdings.ledge(headstock).ifPresent(choices::add);
            }
        }
        return choices;
    }

    /** Something turned must be there to dial by. */
    private boolean isDialledByOutside() {
        return work.tasks().list().stream()
                .anyMatch(task -> (task instanceof Task.Turned || task instanceof Task.Inside) && work.isDone(task));
    }

    /** On the outer end itself, round the mouth of what is to be bored. */
    private Optional<Choice> rim(End headstock) {
        End free = headstock.other();
        int last = free == End.A ? 0 : work.shape().count() - 1;
        Length mouth = mouth(free);
        Length within = mouth.plus(Length.mm(2));
        return work.diameter(last).minus(within).half().isLessThan(LAP)
                ? Optional.empty()
                : Optional.of(
                        choice(new Holding.OnFaceplate(headstock, work.face(free), within, true, GripRules.DIALLED)));
    }

    private Length mouth(End free) {
        return (free == End.A ? hollow.radiusAfter(hollow.start()) : hollow.radiusBefore(hollow.end())).times(2);
    }

    /** On the finished ledge nearest the plate, all beyond it being smaller. */
    private Optional<Choice> ledge(End headstock) {
        Shape shape = work.shape();
        End free = headstock.other();
        int first = headstock == End.A ? 0 : shape.count() - 1;
        for (int i = first; shape.isSection(shape.neighbour(i, free)); i = shape.neighbour(i, free)) {
            Length beyond = largestBeyond(i, free);
            boolean turned = !work.isRaw(i) && !work.isRaw(shape.neighbour(i, free));
            if (turned && !shape.diameter(i).minus(beyond).half().isLessThan(LAP)) {
                return Optional.of(choice(
                        new Holding.OnFaceplate(headstock, shape.border(i, free), beyond, false, GripRules.DIALLED)));
            }
        }
        return Optional.empty();
    }

    private Length largestBeyond(int index, End free) {
        Length largest = Length.ZERO;
        for (int i = work.shape().neighbour(index, free);
                work.shape().isSection(i);
                i = work.shape().neighbour(i, free)) {
            largest = Length.most(largest, work.diameter(i));
        }
        return largest;
    }

    private Choice choice(Holding.OnFaceplate held) {
        End free = held.headstock().other();
        Length nuts = free.from(held.clamped(), HEIGHT);
        Length end = free.from(work.face(free), GripRules.CLEARANCE);
        return new Choice(
                lathe,
                held,
                Choice.Work.TURNING,
                new Choice.Stretch(Length.least(nuts, end), Length.most(nuts, end)),
                held.rim() ? Set.of() : Set.of(free),
                new Choice.Gripped.OnFace(held.headstock()),
                Costing.faceplate(),
                words(held),
                working(held));
    }

    private List<String> words(Holding.OnFaceplate held) {
        String within = LengthText.in(held.within(), lathe.unit());
        return List.of(
                "Wipe the faceplate and end " + held.headstock()
                        + ", and set it on true parallels where a tool comes through.",
                "Three clamps or more on the " + (held.rim() ? "rim" : "ledge") + ", none reaching inside Ø " + within
                        + ", copper under each, the heels packed level.",
                "Dial true to " + LengthText.in(held.runOut(), lathe.unit())
                        + ", nip down evenly and dial again; balance it with a weight.",
                "Turn it round once by hand: nothing may touch bed, slide or tool. Slow speed first.");
    }

    private List<Step> working(Holding.OnFaceplate held) {
        var working = new Working();
        working.fact(
                "Clamps lap over at least " + LengthText.in(LAP, lathe.unit()) + " outside",
                "Ø " + LengthText.in(held.within(), lathe.unit()),
                GripRules.SOURCE);
        working.fact(
                "Run-out as dialled",
                LengthText.in(held.runOut(), lathe.unit()) + " total indicator reading",
                GripRules.SOURCE);
        return working.steps();
    }
}
