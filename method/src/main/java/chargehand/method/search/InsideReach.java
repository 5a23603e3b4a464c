package chargehand.method.search;

import chargehand.measure.Length;
import chargehand.method.holding.Choice;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.MillCutter;
import chargehand.method.kit.Tooling;
import chargehand.method.setting.BoringBars;
import chargehand.method.task.Bores;
import chargehand.method.task.Task;
import chargehand.method.work.Standing;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.End;

/** Whether the tools owned make a bore from an end that a holding leaves open. */
final class InsideReach {
    /** How near a twist drill must be to the size of a drilled hole. */
    private static final Length DRILL_NEAR = Length.mm(0.15);

    private static final Length PILOT_ROOM = Length.mm(1.5);

    private final Tooling tooling;
    private final Standing work;
    private final Choice choice;

    InsideReach(Tooling tooling, Standing work, Choice choice) {
        this.tooling = tooling;
        this.work = work;
        this.choice = choice;
    }

    boolean canMake(Task.Inside task) {
        Bore bore = task.bore();
        boolean fromOwn = choice.faces().contains(bore.from());
        boolean fromOther = Bores.isThrough(bore)
                && !(bore instanceof Bore.Coned)
                && choice.faces().contains(bore.from().other());
        return (fromOwn || fromOther) && hasTools(bore) && reachesTo(bore);
    }

    private boolean hasTools(Bore bore) {
        return switch (bore) {
            case Bore.Drilled drilled -> hasDrill(drilled.diameter().length());
            case Bore.Bored bored -> hasBar(bored.diameter().length(), bore);
            case Bore.Counterbored counterbored ->
                hasBar(counterbored.diameter().length(), bore);
            case Bore.Reamed reamed ->
                tooling.holeTools().reamers().stream()
                        .anyMatch(reamer ->
                                reamer.diameter().equals(reamed.diameter().length()));
            case Bore.Tapped tapped ->
                tooling.holeTools().findTap(tapped.thread().designation()).isPresent();
            case Bore.Coned coned -> true;
        };
    }

    /** The hole as it is drilled first lets a bar in that reaches the bottom. */
    private boolean hasBar(Length diameter, Bore bore) {
        return BoringBars.pick(tooling, diameter.minus(PILOT_ROOM), depth(bore)).isPresent();
    }

    boolean hasDrill(Length diameter) {
        return tooling.holeTools().drills().stream()
                .anyMatch(drill -> drill.diameter().isWithin(DRILL_NEAR, diameter));
    }

    boolean hasSlotDrill(Length width) {
        return tooling.millCutters(MillCutter.SlotDrill.class).stream()
                .anyMatch(cutter -> !cutter.diameter().isMoreThan(width));
    }

    /** A drill in the tailstock goes as deep as its spindle travels; deeper holes are drilled in two settings. */
    private boolean reachesTo(Bore bore) {
        return !(choice.machine() instanceof Lathe lathe)
                || !depth(bore).isMoreThan(lathe.holders().tailstock().travel().times(2));
    }

    private Length depth(Bore bore) {
        return switch (bore.depth()) {
            case Depth.Through through ->
                work.face(End.B).minus(work.face(End.A)).abs();
            case Depth.Blind blind -> blind.depth().length();
        };
    }
}
