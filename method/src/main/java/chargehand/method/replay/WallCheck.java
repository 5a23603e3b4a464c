package chargehand.method.replay;

import chargehand.method.plan.Holding;
import chargehand.part.End;

/** Whether what jaws bear on still stands their push once everything in the set-up is cut. */
final class WallCheck {
    private final TurnedWork work;
    private final FaultList faults;

    WallCheck(TurnedWork work, FaultList faults) {
        this.work = work;
        this.faults = faults;
    }

    void check(Holding holding) {
        switch (holding) {
            case Holding.InChuck held -> inChuck(held);
            case Holding.InCollet held -> wall(held.grip(), held.headstock(), Believable.LEAST_WALL_IN_SOFT_JAWS);
            case Holding.InDividingHead held -> wall(held.grip(), held.headstock(), Believable.LEAST_WALL_IN_HARD_JAWS);
            case Holding.BetweenCentres held -> {}
            case Holding.OnMandrel held -> {}
            case Holding.OnStub held -> {}
            case Holding.OnFaceplate held -> {}
            case Holding.LaidAcross held -> {}
            case Holding.InVice held -> {}
            case Holding.OnTable held -> {}
            case Holding.Clamped held -> {}
        }
    }

    private void inChuck(Holding.InChuck held) {
        switch (held.bearing()) {
            case Holding.Bearing.Closing closing ->
                wall(held.grip(), held.headstock(), Believable.LEAST_WALL_IN_HARD_JAWS);
            case Holding.Bearing.SoftJaws soft ->
                wall(held.grip(), held.headstock(), Believable.LEAST_WALL_IN_SOFT_JAWS);
            case Holding.Bearing.SplitBush bush ->
                wall(held.grip(), held.headstock(), Believable.LEAST_WALL_IN_SOFT_JAWS);
            case Holding.Bearing.Opening opening ->
                new BoreGripCheck(work, held.grip(), held.headstock(), faults).wall();
        }
    }

    private void wall(Holding.Grip grip, End headstock, double least) {
        new GripCheck(work, grip, headstock, faults).wall(least);
    }
}
