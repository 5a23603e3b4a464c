package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.measure.Volume;
import chargehand.method.plan.Holding.Face;
import chargehand.trade.thread.ScrewThread;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A block as it stands.
 *
 * @param length along x
 * @param width along y
 * @param thickness along z
 * @param milled the faces brought to size so far
 * @param holes as they are now
 */
public record BlockWork(Length length, Length width, Length thickness, Set<Face> milled, List<HoleCut> holes)
        implements Work {
    public BlockWork {
        milled = Set.copyOf(milled);
        holes = List.copyOf(holes);
    }

    /**
     * A hole square to the top.
     *
     * @param depth from the top; through where it is empty
     * @param reamed whether it is reamed to its diameter
     * @param thread tapped into it, if it is
     */
    public record HoleCut(
            Length x, Length y, Length diameter, Optional<Length> depth, boolean reamed, Optional<ScrewThread> thread) {
        boolean isAt(Length otherX, Length otherY) {
            return x.equals(otherX) && y.equals(otherY);
        }
    }

    /** The size over a face and the one opposite. */
    Length over(Face face) {
        return switch (face) {
            case LEFT, RIGHT -> length;
            case NEAR, FAR -> width;
            case BOTTOM, TOP -> thickness;
        };
    }

    @Override
    public Volume volume() {
        double block = length.mm() * width.mm() * thickness.mm();
        double drilled = holes.stream().mapToDouble(this::volumeOf).sum();
        return Volume.cubicMm(block - drilled);
    }

    private double volumeOf(HoleCut hole) {
        double radius = hole.diameter().half().mm();
        return Math.PI
                * radius
                * radius
                * Length.least(thickness, hole.depth().orElse(thickness)).mm();
    }
}
