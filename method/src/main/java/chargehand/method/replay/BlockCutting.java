package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Holding.Face;
import chargehand.method.replay.BlockWork.HoleCut;
import chargehand.part.Body;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Optional;

/** What each cut leaves of a block, and whether it finds what it needs. */
final class BlockCutting {
    private final Body.Block wanted;
    private final BlockWork work;
    private final Holding holding;
    private final FaultList faults;

    BlockCutting(Body.Block wanted, BlockWork work, Holding holding, FaultList faults) {
        this.wanted = wanted;
        this.work = work;
        this.holding = holding;
        this.faults = faults;
    }

    /** The work after a cut. */
    BlockWork after(Cut cut) {
        return switch (cut) {
            case Cut.MillFace face -> milled(face);
            case Cut.DrillHole hole -> drilled(hole);
            case Cut.ReamHole hole -> reamed(hole);
            case Cut.TapHole hole -> tapped(hole);
            case Cut.SawOff saw -> work;
            case Cut.Deburr deburr -> work;
            case Cut.FaceEnd face -> notOnABlock();
            case Cut.CentreHole centre -> notOnABlock();
            case Cut.DrillAxial drill -> notOnABlock();
            case Cut.BoreTo bore -> notOnABlock();
            case Cut.ReamTo ream -> notOnABlock();
            case Cut.ConeInside cone -> notOnABlock();
            case Cut.TurnDiameter turn -> notOnABlock();
            case Cut.TurnTaper taper -> notOnABlock();
            case Cut.CutGroove groove -> notOnABlock();
            case Cut.FinishEdge edge -> notOnABlock();
            case Cut.PartOff part -> notOnABlock();
            case Cut.ThreadOutside thread -> notOnABlock();
            case Cut.ThreadInside thread -> notOnABlock();
            case Cut.CutTeeth teeth -> notOnABlock();
            case Cut.DrillCircle holes -> notOnABlock();
            case Cut.MillFlats flats -> notOnABlock();
            case Cut.DrillAcross hole -> notOnABlock();
            case Cut.MillKeyway keyway -> notOnABlock();
            case Cut.SlotInBore slot -> notOnABlock();
            case Cut.RecessInBore recess -> notOnABlock();
        };
    }

    private BlockWork notOnABlock() {
        faults.add(Fault.Code.WRONG_SIDE, "a block is not turned");
        return work;
    }

    private BlockWork milled(Cut.MillFace cut) {
        Face face = cut.face();
        faults.unless(!work.milled().contains(face), Fault.Code.MADE_TWICE, () -> "that face is milled already");
        faults.unless(
                work.holes().isEmpty(), Fault.Code.OUT_OF_ORDER, () -> "faces come before the holes placed from them");
        faults.unless(
                isClear(face),
                Fault.Code.TOOL_FOULS,
                () -> "the face to be milled lies in the jaws, on the parallels or the table, or under clamps");
        faults.unless(
                cut.to().isLessThan(work.over(face)),
                Fault.Code.NOTHING_TO_CUT,
                () -> "this takes nothing off the work");
        faults.unless(
                !cut.to().isLessThan(BlockEnd.size(wanted, face).minus(Deviation.ALLOWED)),
                Fault.Code.BELOW_FINISH,
                () -> "this mills the block to " + faults.size(cut.to()) + ", below its size");
        var milled = new HashSet<>(work.milled());
        milled.add(face);
        return switch (face) {
            case LEFT, RIGHT -> new BlockWork(cut.to(), work.width(), work.thickness(), milled, work.holes());
            case NEAR, FAR -> new BlockWork(work.length(), cut.to(), work.thickness(), milled, work.holes());
            case BOTTOM, TOP -> new BlockWork(work.length(), work.width(), cut.to(), milled, work.holes());
        };
    }

    private boolean isClear(Face face) {
        return switch (holding) {
            case Holding.InVice held ->
                face != held.fixed() && face != held.fixed().opposite() && face != held.down();
            case Holding.OnTable held -> held.out().contains(face);
            case Holding.InChuck held -> false;
            case Holding.InCollet held -> false;
            case Holding.BetweenCentres held -> false;
            case Holding.OnMandrel held -> false;
            case Holding.OnStub held -> false;
            case Holding.OnFaceplate held -> false;
            case Holding.InDividingHead held -> false;
            case Holding.LaidAcross held -> false;
            case Holding.Clamped held -> false;
        };
    }

    private boolean isTopUp() {
        return (holding instanceof Holding.InVice held && held.down() == Face.BOTTOM)
                || (holding instanceof Holding.OnTable table && table.down() == Face.BOTTOM);
    }

    private Optional<HoleCut> holeAt(Length x, Length y) {
        return work.holes().stream().filter(hole -> hole.isAt(x, y)).findFirst();
    }

    private void topUp() {
        faults.unless(isTopUp(), Fault.Code.WRONG_SIDE, () -> "holes are made with the bottom down");
    }

    private BlockWork drilled(Cut.DrillHole cut) {
        topUp();
        faults.unless(
                work.length().equals(wanted.length().length())
                        && work.width().equals(wanted.width().length()),
                Fault.Code.NO_START,
                () -> "holes are placed from faces that are at their size");
        faults.unless(
                holeAt(cut.x(), cut.y()).isEmpty(),
                Fault.Code.MADE_TWICE,
                () -> "there is a hole in that place already");
        Optional<Length> depth = cut.through() ? Optional.empty() : Optional.of(cut.depth());
        return with(new HoleCut(cut.x(), cut.y(), cut.diameter(), depth, false, Optional.empty()));
    }

    private BlockWork reamed(Cut.ReamHole cut) {
        topUp();
        Optional<HoleCut> hole = holeAt(cut.x(), cut.y())
                .filter(each -> !each.reamed() && each.thread().isEmpty())
                .filter(each -> cut.diameter().isMoreThan(each.diameter())
                        && !cut.diameter().minus(each.diameter()).isMoreThan(Believable.MOST_REAMED));
        faults.unless(hole.isPresent(), Fault.Code.WRONG_HOLE, () -> "there is no hole there for the reamer to follow");
        return hole.map(each ->
                        with(new HoleCut(each.x(), each.y(), cut.diameter(), each.depth(), true, Optional.empty())))
                .orElse(work);
    }

    private BlockWork tapped(Cut.TapHole cut) {
        Optional<HoleCut> hole = holeAt(cut.x(), cut.y())
                .filter(each -> each.thread().isEmpty())
                .filter(each ->
                        each.diameter().isWithin(Deviation.ALLOWED, cut.thread().minorInternal()));
        faults.unless(
                hole.isPresent(),
                Fault.Code.WRONG_HOLE,
                () -> "there is no hole of " + faults.size(cut.thread().minorInternal()) + " there to tap");
        return hole.map(each -> with(new HoleCut(
                        each.x(), each.y(), each.diameter(), each.depth(), false, Optional.of(cut.thread()))))
                .orElse(work);
    }

    /** The work with this hole in place of any at the same spot. */
    private BlockWork with(HoleCut hole) {
        var holes = new ArrayList<>(work.holes());
        holes.removeIf(each -> each.isAt(hole.x(), hole.y()));
        holes.add(hole);
        return new BlockWork(work.length(), work.width(), work.thickness(), work.milled(), holes);
    }
}
