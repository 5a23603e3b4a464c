package chargehand.paper.stage;

import chargehand.drawing.stage.BlockStage;
import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.method.replay.BlockWork;
import chargehand.method.replay.Proof;
import java.util.ArrayList;
import java.util.List;

/** One set-up of a block as the drawing asks for it. */
final class BlockStageOf {
    /** How far a block stands above the jaws where its holding does not say. */
    private static final Length ABOVE = Length.mm(5);

    private final SetUp setUp;
    private final BlockWork before;
    private final BlockWork after;

    BlockStageOf(SetUp setUp, Proof.Stage proof) {
        this.setUp = setUp;
        this.before = (BlockWork) proof.before();
        this.after = (BlockWork) proof.after();
    }

    BlockStage stage(String title) {
        return switch (setUp.holding()) {
            case Holding.InVice vice -> inVice(title, vice);
            case Holding.OnTable table -> onTable(title, table.out());
            case Holding.Clamped clamped -> laidFlat(title);
            case Holding.InChuck held -> laidFlat(title);
            case Holding.InCollet held -> laidFlat(title);
            case Holding.BetweenCentres held -> laidFlat(title);
            case Holding.OnMandrel held -> laidFlat(title);
            case Holding.OnStub held -> laidFlat(title);
            case Holding.OnFaceplate held -> laidFlat(title);
            case Holding.InDividingHead held -> laidFlat(title);
            case Holding.LaidAcross held -> laidFlat(title);
        };
    }

    private BlockStage onTable(String title, List<Holding.Face> out) {
        var between = new BlockStage.Out(out.contains(Holding.Face.NEAR), out.contains(Holding.Face.FAR));
        var along = new BlockStage.Out(out.contains(Holding.Face.LEFT), out.contains(Holding.Face.RIGHT));
        return new BlockStage(
                title,
                new BlockStage.Rest.Table(between, along),
                after.length(),
                after.width(),
                after.thickness(),
                before.thickness(),
                after.thickness(),
                false,
                holes(),
                "");
    }

    /** In the saw's vice, or wherever else it merely lies. */
    private BlockStage laidFlat(String title) {
        return new BlockStage(
                title,
                after.length(),
                after.width(),
                after.thickness(),
                before.thickness(),
                Length.least(ABOVE, after.thickness().half()),
                false,
                List.of(),
                "");
    }

    private BlockStage inVice(String title, Holding.InVice vice) {
        boolean onEnd = vice.down() == Holding.Face.LEFT || vice.down() == Holding.Face.RIGHT;
        boolean flat = vice.down() == Holding.Face.BOTTOM || vice.down() == Holding.Face.TOP;
        Length high = flat ? after.thickness() : onEnd ? after.length() : after.width();
        Length stock = flat ? before.thickness() : onEnd ? before.length() : before.width();
        Length along = onEnd ? after.width() : after.length();
        Length between = flat ? after.width() : after.thickness();
        return new BlockStage(
                title,
                along,
                between,
                high,
                stock,
                Length.least(vice.height(), high.times(0.8)),
                cutsTop(vice),
                holes(),
                "");
    }

    private boolean cutsTop(Holding.InVice vice) {
        return setUp.operations().stream()
                .map(Operation::cut)
                .anyMatch(cut -> cut instanceof Cut.MillFace face
                        && face.face() == vice.down().opposite());
    }

    private List<BlockStage.HoleBelow> holes() {
        var holes = new ArrayList<BlockStage.HoleBelow>();
        for (Operation operation : setUp.operations()) {
            if (operation.cut() instanceof Cut.DrillHole hole) {
                Length depth = hole.through() ? after.thickness() : hole.depth();
                holes.add(new BlockStage.HoleBelow(hole.x(), hole.diameter(), depth, ""));
            }
        }
        return holes;
    }
}
