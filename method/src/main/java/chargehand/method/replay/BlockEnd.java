package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Holding.Face;
import chargehand.method.replay.BlockWork.HoleCut;
import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.Hole;
import java.util.ArrayList;

/** Holds a block at the end against the part: its sizes, its faces, and every hole once. */
final class BlockEnd {
    private final Body.Block wanted;
    private final FaultList faults;

    BlockEnd(Body.Block wanted, FaultList faults) {
        this.wanted = wanted;
        this.faults = faults;
    }

    /** The size that is asked over a face and the one opposite. */
    static Length size(Body.Block wanted, Face face) {
        return switch (face) {
            case LEFT, RIGHT -> wanted.length().length();
            case NEAR, FAR -> wanted.width().length();
            case BOTTOM, TOP -> wanted.thickness().length();
        };
    }

    /** Compares everything. Returns the greatest difference of any size. */
    Length check(BlockWork raw, BlockWork made) {
        Length worst = Length.ZERO;
        for (Face face : Face.values()) {
            Length size = size(wanted, face);
            worst = Length.most(worst, made.over(face).minus(size).abs());
            boolean asDrawn = raw.over(face).equals(size);
            faults.unless(
                    asDrawn || made.milled().contains(face),
                    Fault.Code.NOT_TO_SIZE,
                    () -> "the " + face + " face is left as it was sawn or rolled");
        }
        Length difference = worst;
        faults.unless(
                !worst.isMoreThan(Deviation.ALLOWED),
                Fault.Code.NOT_TO_SIZE,
                () -> "the block comes out different by " + faults.size(difference));
        holes(made);
        wanted.cuts()
                .forEach(cut -> faults.add(Fault.Code.NOT_AS_DRAWN, "'" + cut.name() + "' of the block is not made"));
        return worst;
    }

    private void holes(BlockWork made) {
        var missing = new ArrayList<>(wanted.holes());
        for (HoleCut cut : made.holes()) {
            boolean asked = missing.stream()
                    .filter(hole -> isSame(cut, hole))
                    .findFirst()
                    .map(missing::remove)
                    .orElse(false);
            faults.unless(asked, Fault.Code.NOT_AS_DRAWN, () -> "a hole is made that the block does not have so");
        }
        faults.unless(
                missing.isEmpty(), Fault.Code.NOT_AS_DRAWN, () -> "holes of the block are not made: " + missing.size());
    }

    private static boolean isSame(HoleCut cut, Hole hole) {
        return near(cut.x(), hole.x().length())
                && near(cut.y(), hole.y().length())
                && isAsDeep(cut, hole.depth())
                && isMade(cut, hole);
    }

    private static boolean isMade(HoleCut cut, Hole hole) {
        return switch (hole) {
            case Hole.Drilled drilled ->
                !cut.reamed()
                        && cut.thread().isEmpty()
                        && near(cut.diameter(), drilled.diameter().length());
            case Hole.Reamed reamed ->
                cut.reamed() && near(cut.diameter(), reamed.diameter().length());
            case Hole.Counterbored bored -> false;
            case Hole.Tapped tapped ->
                cut.thread().filter(tapped.thread()::equals).isPresent();
        };
    }

    private static boolean isAsDeep(HoleCut cut, Depth depth) {
        return switch (depth) {
            case Depth.Through through -> cut.depth().isEmpty();
            case Depth.Blind(var size) ->
                cut.depth().filter(each -> near(each, size.length())).isPresent();
        };
    }

    private static boolean near(Length one, Length other) {
        return one.isWithin(Deviation.ALLOWED, other);
    }
}
