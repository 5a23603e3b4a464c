package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.BlockCut;
import chargehand.part.Body;
import chargehand.part.check.SizeCheck.Kind;

/** Judges one slot or step of a block. */
final class BlockCutCheck {
    private final Body.Block block;
    private final Findings findings;

    BlockCutCheck(Body.Block block, Findings findings) {
        this.block = block;
        this.findings = findings;
    }

    /** Judges its sizes by themselves. */
    static void judge(String path, BlockCut cut, SizeCheck sizes) {
        sizes.judge(path + ".depth", cut.depth(), Kind.EITHER);
        switch (cut) {
            case BlockCut.Slot slot -> {
                sizes.judge(path + ".slot", slot.width(), Kind.HOLE);
                sizes.judge(path + ".at", slot.at(), Kind.EITHER);
                if (slot.run() instanceof BlockCut.Run.Part(var from, var length)) {
                    sizes.judge(path + ".length", length, Kind.EITHER);
                }
            }
            case BlockCut.Step step -> sizes.judge(path + ".step", step.width(), Kind.EITHER);
        }
    }

    /** Judges where it lies. */
    void place(String path, BlockCut cut) {
        Length thickness = block.thickness().length();
        if (cut.depth().length().isMoreThan(thickness.minus(WallCheck.LEAST_WALL))) {
            findings.fault(
                    path + ".depth",
                    PartFault.BREAKS_THROUGH,
                    "This goes " + findings.say(cut.depth().length()) + " into a block " + findings.say(thickness)
                            + " thick: nothing is left below it.");
            return;
        }
        BlockCut.Area area = cut.area(block);
        switch (cut) {
            case BlockCut.Step(var name, var side, var width, var depth) -> {
                boolean sideways = side == BlockCut.Side.LEFT || side == BlockCut.Side.RIGHT;
                Length whole =
                        sideways ? block.length().length() : block.width().length();
                within(path + ".step", Length.ZERO, width.length().plus(WallCheck.LEAST_WALL), whole);
            }
            case BlockCut.Slot slot -> slot(path, slot, area);
        }
    }

    private void slot(String path, BlockCut.Slot slot, BlockCut.Area area) {
        boolean lengthwise = slot.along() == BlockCut.Way.X;
        Length length = block.length().length();
        Length width = block.width().length();
        Length wall = WallCheck.LEAST_WALL;
        if (lengthwise) {
            within(path + ".at", area.lower().minus(wall), area.upper().plus(wall), width);
        } else {
            within(path + ".at", area.left().minus(wall), area.right().plus(wall), length);
        }
        if (slot.run() instanceof BlockCut.Run.Part(var from, var over)) {
            Length end = from.length().plus(over.length());
            within(path + ".from", from.length(), end, lengthwise ? length : width);
            if (over.length().isLessThan(slot.width().length())) {
                findings.fault(
                        path + ".length",
                        PartFault.KEYWAY_TOO_SHORT,
                        "A slot is no shorter than it is wide, "
                                + findings.say(slot.width().length()) + ".");
            }
        }
    }

    private void within(String path, Length low, Length high, Length whole) {
        if (low.isNegative() || high.isMoreThan(whole)) {
            findings.fault(
                    path,
                    PartFault.CUT_OFF_BLOCK,
                    "This does not lie on the block, which measures " + findings.say(whole)
                            + " that way, or leaves less than " + findings.say(WallCheck.LEAST_WALL) + " beside it.");
        }
    }
}
