package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.method.kit.DividingHead;
import chargehand.method.kit.Mill;
import chargehand.method.kit.Tooling.Mandrel;
import chargehand.method.kit.Tooling.MandrelKind;
import chargehand.method.plan.Holding;
import chargehand.method.task.Task;
import chargehand.method.work.Standing;
import chargehand.part.End;
import chargehand.part.Section;
import chargehand.part.shape.Profile;
import chargehand.trade.sum.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Ways turned work is held on a mill by what is finished of it: on a mandrel in its bore, or standing on a faced end. */
final class MillHoldings {
    /** The most slender work that stands on the table under clamps: length over diameter (common practice). */
    private static final double MOST_STANDING = 2;

    private MillHoldings() {}

    /** On a mandrel between the dividing head and its tail centre, for teeth. */
    static List<Choice> onMandrel(Mill mill, DividingHead head, Standing work, List<Mandrel> mandrels, Profile hollow) {
        boolean wanted =
                work.tasks().list().stream().anyMatch(task -> task instanceof Task.Teeth && !work.isDone(task));
        boolean swings = !work.shape().body().largestDiameter().half().isMoreThan(head.centreHeight());
        if (!wanted || !swings || work.isOnBar() || !head.tailCentre()) {
            return List.of();
        }
        return mandrels.stream()
                .filter(mandrel -> mandrel.kind() != MandrelKind.STUB)
                .filter(mandrel -> !work.shape().body().length().isMoreThan(mandrel.length()))
                .flatMap(mandrel -> MandrelBore.list(work, mandrel, hollow).stream()
                        .filter(bore -> bore.isHeldBy(mandrel))
                        .map(bore -> onMandrel(mill, head, work, new Mounted(mandrel, bore))))
                .toList();
    }

    private record Mounted(Mandrel mandrel, MandrelBore bore) {}

    private static Choice onMandrel(Mill mill, DividingHead head, Standing work, Mounted mounted) {
        Mandrel mandrel = mounted.mandrel();
        MandrelBore bore = mounted.bore();
        var holding =
                new Holding.OnMandrel(mandrel.name(), bore.diameter(), bore.from(), bore.to(), End.A, mandrel.runOut());
        var working = new Working();
        working.fact(
                "Run-out as held, against the bore",
                LengthText.in(mandrel.runOut(), mill.unit()) + " total indicator reading",
                GripRules.SOURCE);
        return new Choice(
                mill,
                holding,
                Choice.Work.DIVIDING,
                new Choice.Stretch(
                        End.A.from(work.face(End.A), GripRules.CLEARANCE),
                        End.B.from(work.face(End.B), GripRules.CLEARANCE)),
                Set.of(),
                new Choice.Gripped.OnBore(bore.index()),
                Costing.minutes(25, 3),
                List.of(
                        "Oil the bore and press the work on the " + mandrel.name() + ".",
                        "Between the centre of the " + head.name()
                                + " and its tail centre, dog on the mandrel and locked in the driver without play.",
                        "Clock the mandrel at both ends: level, and along the table.",
                        "Cutter on its arbor in the spindle, its middle at the height of the centres."),
                working.steps());
    }

    /** Standing on a finished end, for holes in the face at the other. */
    static List<Choice> upright(Mill mill, Standing work) {
        var choices = new ArrayList<Choice>();
        Length length = work.shape().body().length();
        boolean takes = mill.clamps().filter(reach -> !length.isMoreThan(reach)).isPresent()
                && length.over(work.shape().body().largestDiameter()) <= MOST_STANDING
                && !work.isOnBar();
        for (End up : End.values()) {
            if (takes && isWanted(work, up) && work.isDone(new Task.FaceOf(up.other()))) {
                choices.add(standing(mill, work, up));
            }
        }
        return choices;
    }

    private static boolean isWanted(Standing work, End up) {
        return work.tasks().list().stream()
                .anyMatch(task ->
                        task instanceof Task.FaceHoles holes && holes.holes().end() == up && !work.isDone(task));
    }

    private static Choice standing(Mill mill, Standing work, End up) {
        Holding.Face down = up == End.A ? Holding.Face.RIGHT : Holding.Face.LEFT;
        return new Choice(
                mill,
                new Holding.OnTable(down, List.of()),
                Choice.Work.UPRIGHT,
                new Choice.Stretch(work.face(End.A), work.face(End.A)),
                Set.of(up),
                new Choice.Gripped.OnFace(up.other()),
                Costing.minutes(12, 4),
                instructions(work, up),
                List.of());
    }

    private static List<String> instructions(Standing work, End up) {
        boolean toothed = work.shape().body().outside().stream().anyMatch(Section.Toothed.class::isInstance);
        String clear = toothed ? ", clear of the holes and off the teeth." : ", clear of the holes.";
        return Stream.of(
                        "End " + up.other() + " down on parallels, clear of every hole that goes through.",
                        "Clamp at two places or more, packed" + clear,
                        "Clock the bore, or the outside where there is none, true under the spindle; set both table dials"
                                + " to zero there.")
                .toList();
    }
}
